package boltlore.desk.stores;

import boltlore.book.PurchaseStanding;
import boltlore.book.db.Reading;
import boltlore.book.stores.OwedPlan;
import boltlore.book.stores.PurchaseDesk;
import boltlore.book.stores.StoresDesk;
import boltlore.book.stores.StoresDesk.Arrival;
import boltlore.catalogue.Part;
import boltlore.catalogue.Tracked;
import boltlore.desk.frame.Acting;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Sentences;
import boltlore.desk.frame.Stretch;
import boltlore.desk.frame.Told;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import boltlore.json.TextShape;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import boltlore.trades.buying.ShopPlan;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Goods in by the list: what came of one purchase order, or what the workshop has made, each line filled in where it came. */
public final class DeliveryPages {

    private static final int MOST = 60;

    private final Workshop workshop;
    private final ShortPages lacking;

    DeliveryPages(Workshop workshop, ShortPages lacking) {
        this.workshop = workshop;
        this.lacking = lacking;
    }

    void open(Doors doors) {
        doors.look("/stores/purchase/{number}/receive", this::ordered);
        doors.act("/stores/purchase/{number}/receive", call -> take(call, call.path("number"), this::ordered));
        doors.look("/stores/made", this::made);
        doors.act("/stores/made", call -> take(call, "", this::made));
    }

    private @Nullable Part known(String number) {
        return workshop.bench().catalogue().parts().get(new PartNumber(number));
    }

    private Answer ordered(Call call) {
        String number = call.path("number");
        return workshop.book().read(reading -> {
            Outcome<PurchaseStanding> found = PurchaseDesk.any(reading, number);
            if (!(found instanceof Outcome.Sound<PurchaseStanding> sound)) {
                return new Answer.Missing(Sentences.missing(found.faults()));
            }
            Map<String, BigDecimal> left = new LinkedHashMap<>();
            sound.value().lines().stream()
                    .filter(line -> sound.value().open() && line.left().signum() > 0)
                    .forEach(line -> left.put(line.part(), line.left()));
            String path = "/stores/purchase/" + number + "/receive";
            return Answer.page(
                    "Goods in: " + number + " from " + sound.value().supplier(),
                    "stores/delivery.jte",
                    delivery(reading, call, path, left));
        });
    }

    private Answer made(Call call) {
        return workshop.book()
                                .read(reading -> lacking.lately(reading, call.today())
                                        .plan()
                                        .then(plan -> {
                                            Map<String, BigDecimal> left = plan.map(DeliveryPages::toMake)
                                                    .orElseGet(LinkedHashMap::new);
                                            return Outcome.sound(Answer.page(
                                                    "Goods in: made here",
                                                    "stores/delivery.jte",
                                                    delivery(reading, call, "/stores/made", left)));
                                        }))
                        instanceof Outcome.Sound<Answer.Shown> sound
                ? sound.value()
                : new Answer.Missing("What is to make cannot be worked out; 'Short' says why.");
    }

    /** Those first that must be begun first; a piece is taken in bare, and in its finish when the coating shop accepts it. */
    private static Map<String, BigDecimal> toMake(ShopPlan plan) {
        Map<String, BigDecimal> all = OwedPlan.toMake(plan);
        Map<String, BigDecimal> left = new LinkedHashMap<>();
        plan.toMake().stream()
                .map(receipt -> receipt.item().part().text())
                .forEach(part -> left.put(part, all.getOrDefault(part, BigDecimal.ZERO)));
        return left;
    }

    private Delivery delivery(Reading reading, Call call, String path, Map<String, BigDecimal> left) {
        boolean all = call.said("all").equals("yes");
        String word = call.said("word");
        List<Map.Entry<String, BigDecimal>> wanted = left.entrySet().stream()
                .filter(each -> word.isEmpty()
                        || (each.getKey() + " " + workshop.bench().named(each.getKey()))
                                .toLowerCase(java.util.Locale.ROOT)
                                .contains(word.toLowerCase(java.util.Locale.ROOT)))
                .toList();
        String query = path + "?all=" + (all ? "yes" : "") + "&word=" + PickPages.coded(word);
        return new Delivery(
                Told.of(reading, call),
                path,
                word,
                all,
                Stretch.of(wanted, call, MOST, query).map(each -> line(each.getKey(), each.getValue(), all, call)));
    }

    private Line line(String number, BigDecimal left, boolean all, Call call) {
        Part part = known(number);
        int at = call.all("part").indexOf(number);
        return new Line(
                number,
                workshop.bench().named(number),
                part == null ? "" : part.unit(),
                part == null ? "" : part.bin(),
                Digits.plain(left),
                part != null && part.tracked() == Tracked.LOT,
                part != null && part.tracked() == Tracked.SERIAL,
                at < 0 ? all ? Digits.plain(left) : "" : said(call, "quantity", at),
                said(call, "lot", at),
                said(call, "serials", at));
    }

    private static String said(Call call, String field, int at) {
        List<String> all = call.all(field);
        return at < 0 || at >= all.size() ? "" : all.get(at);
    }

    private Answer take(Call call, String purchase, Function<Call, Answer> page) {
        Typed typed = new Typed(call);
        List<String> parts = call.all("part");
        List<Arrival> arrivals = new ArrayList<>();
        for (int at = 0; at < parts.size(); at++) {
            List<String> serials = Typed.split(said(call, "serials", at));
            String quantity = said(call, "quantity", at);
            if (!quantity.isEmpty() || !serials.isEmpty()) {
                arrivals.add(arrival(typed, call, at, purchase, serials));
            }
        }
        if (arrivals.isEmpty()) {
            typed.fault("quantity", "Came", "nothing filled in", "how much came, of one part at least");
        }
        String why = typed.sentence("reason", "Reason");
        String path = purchase.isEmpty() ? "/stores/made" : "/stores/purchase/" + purchase;
        return Acting.done(
                call,
                path,
                by -> typed.sound()
                        .then(ok -> new StoresDesk(workshop.book(), by, workshop.bench()).receive(arrivals, why)),
                page);
    }

    private static Arrival arrival(Typed typed, Call call, int at, String purchase, List<String> serials) {
        String number = call.all("part").get(at);
        String quantity = said(call, "quantity", at);
        BigDecimal some =
                quantity.isEmpty() ? BigDecimal.valueOf(serials.size()) : typed.number("quantity", number, quantity);
        return new Arrival(
                typed.said("part", "Part", number, TextShape.PART_NUMBER),
                "",
                some,
                purchase,
                said(call, "lot", at).isEmpty() ? "" : typed.said("lot", "Lot", said(call, "lot", at), TextShape.LINE),
                serials.stream()
                        .map(serial -> typed.said("serials", "Serial number", serial, TextShape.LINE))
                        .toList(),
                "",
                call.said("over").equals("yes"));
    }

    /**
     * A list of what may have come.
     *
     * @param path of the page
     * @param word that parts are looked for by
     * @param all whether everything is filled in
     */
    public record Delivery(List<String> told, String path, String word, boolean all, Stretch<Line> lines) {}

    /**
     * A part of it.
     *
     * @param quantity that stands in the field
     */
    public record Line(
            String part,
            String name,
            String unit,
            String bin,
            String left,
            boolean byLot,
            boolean bySerial,
            String quantity,
            String lot,
            String serials) {}
}
