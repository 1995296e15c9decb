package boltlore.desk.fabrication;

import boltlore.book.ShopHappening.Kept;
import boltlore.book.db.Reading;
import boltlore.book.db.Shop;
import boltlore.book.orders.KitsAtHand;
import boltlore.book.stores.RackDesk;
import boltlore.desk.frame.Acting;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.DrawnSheet;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Sentences;
import boltlore.desk.frame.Told;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import boltlore.findings.Findings;
import boltlore.json.TextShape;
import boltlore.measure.Digits;
import boltlore.report.Report;
import boltlore.trades.KitInWork;
import boltlore.trades.cutting.CuttingTrade;
import boltlore.trades.cutting.CuttingTrade.CutTogether;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The cutting list, drawn, with the remnants on the rack used first; and the rack. */
public final class CutPages {

    private final Workshop workshop;
    private final KitsAtHand kits;

    CutPages(Workshop workshop, KitsAtHand kits) {
        this.workshop = workshop;
        this.kits = kits;
    }

    void open(Doors doors) {
        doors.look("/fabrication/cut", this::list);
        doors.act("/fabrication/cut", this::cut);
        doors.look("/fabrication/rack", this::rack);
        doors.act("/fabrication/rack/add", this::add);
        doors.act("/fabrication/rack/heat", this::heat);
        doors.act("/fabrication/rack/scrap", this::scrap);
    }

    private record Planned(List<KitInWork> kits, CutTogether cut) {}

    private Outcome<Planned> planned(Reading reading, List<String> orders, Call call) {
        return kits.of(reading, orders, call.today())
                .then(found -> CuttingTrade.cut(
                                found.stream().map(KitInWork::bill).toList(),
                                RackDesk.rack(reading),
                                workshop.bench().catalogue(),
                                Findings.NONE)
                        .then(cut -> Outcome.sound(new Planned(found, cut))));
    }

    private Answer list(Call call) {
        Typed typed = new Typed(call);
        List<String> orders = typed.texts("order", "Order", TextShape.ORDER_NAME);
        return workshop.book().read(reading -> {
            Outcome<Planned> planned = typed.sound().then(ok -> planned(reading, orders, call));
            if (!(planned instanceof Outcome.Sound<Planned> sound)) {
                return new Answer.Missing(Sentences.missing(planned.faults()));
            }
            Report report = sound.value().cut().sheet().report().get();
            return DrawnSheet.isAsked(call)
                    ? DrawnSheet.handed(report, call)
                    : Answer.page(
                            "Cut " + String.join(", ", orders),
                            "fabrication/cut.jte",
                            new Cut(
                                    Told.of(reading, call),
                                    orders,
                                    DrawnSheet.of(report, call, path(orders), "Saw"),
                                    sound.value().cut().plan().materials().stream()
                                            .map(material -> new Choice(
                                                    material.material().name(),
                                                    material.material().says()))
                                            .toList()));
        });
    }

    /** It is planned anew: what is done is what the rack gives now, or the book refuses it. */
    private Answer cut(Call call) {
        Typed typed = new Typed(call);
        List<String> orders = typed.texts("order", "Order", TextShape.ORDER_NAME);
        Map<String, String> heats = new HashMap<>();
        List<String> materials = call.all("material");
        List<String> said = call.all("heat");
        for (int i = 0; i < Math.min(materials.size(), said.size()); i++) {
            if (!said.get(i).isEmpty()) {
                heats.put(materials.get(i), said.get(i));
            }
        }
        String why = typed.sentence("reason", "Remark");
        return Acting.done(
                call,
                "/fabrication/rack",
                by -> typed.sound()
                        .then(ok -> workshop.book().read(reading -> {
                            reading.notDone(by);
                            return planned(reading, orders, call);
                        }))
                        .then(planned ->
                                new RackDesk(workshop.book(), by).cut(planned.kits(), planned.cut(), heats, why)),
                this::list);
    }

    private static String path(List<String> orders) {
        return "/fabrication/cut?"
                + orders.stream().map(order -> "order=" + coded(order)).collect(Collectors.joining("&"));
    }

    static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private Answer rack(Call call) {
        return workshop.book()
                .read(reading -> Answer.page(
                        "Remnants on the rack",
                        "fabrication/rack.jte",
                        new Rack(
                                Told.of(reading, call),
                                reading.shop().rests(false).stream()
                                        .map(CutPages::rest)
                                        .toList(),
                                workshop.bench().catalogue().materials().values().stream()
                                        .filter(material -> material.bars() != null)
                                        .map(material -> new Choice(material.name(), material.says()))
                                        .sorted(Comparator.comparing(Choice::says))
                                        .toList())));
    }

    private static Rest rest(Shop.Rest rest) {
        return new Rest(rest.remnant(), rest.material(), Digits.plain(rest.lengthMm()), rest.heat(), rest.leftBy());
    }

    private Answer add(Call call) {
        Typed typed = new Typed(call);
        Kept kept = new Kept(
                typed.text("mark", "Mark", TextShape.ORDER_NAME),
                typed.text("material", "Material", TextShape.NAME),
                typed.amount("mm", "Length"),
                typed.line("heat", "Heat"),
                "");
        String why = typed.sentence("reason", "Remark");
        return Acting.done(
                call,
                "/fabrication/rack",
                by -> typed.sound()
                        .then(ok -> new RackDesk(workshop.book(), by)
                                .add(kept, workshop.bench().catalogue(), why)),
                this::rack);
    }

    private Answer heat(Call call) {
        Typed typed = new Typed(call);
        String mark = typed.text("mark", "Mark", TextShape.ORDER_NAME);
        String heat = typed.text("heat", "Heat", TextShape.LINE);
        return Acting.done(
                call,
                "/fabrication/rack",
                by -> typed.sound().then(ok -> new RackDesk(workshop.book(), by).heat(mark, heat, "")),
                this::rack);
    }

    private Answer scrap(Call call) {
        Typed typed = new Typed(call);
        String mark = typed.text("mark", "Mark", TextShape.ORDER_NAME);
        String why = typed.reason("reason", "Why it goes");
        return Acting.done(
                call,
                "/fabrication/rack",
                by -> typed.sound().then(ok -> new RackDesk(workshop.book(), by).scrap(mark, why)),
                this::rack);
    }

    /**
     * The cutting list of some orders.
     *
     * @param materials of which bars are cut, for their heats
     */
    public record Cut(List<String> told, List<String> orders, DrawnSheet sheet, List<Choice> materials) {}

    /** What lies on the rack. */
    public record Rack(List<String> told, List<Rest> rests, List<Choice> materials) {}

    /** A material that remnants are left of. */
    public record Choice(String material, String says) {}

    /** One remnant. */
    public record Rest(String mark, String material, String mm, String heat, String leftBy) {}
}
