package boltlore.book.orders;

import boltlore.book.BuiltHappening.Worked;
import boltlore.book.Entry;
import boltlore.book.Happening;
import boltlore.book.KitDifference.Piece;
import boltlore.book.OrderHappening;
import boltlore.book.PurchaseStanding;
import boltlore.book.PurchaseStanding.LineStanding;
import boltlore.book.Subject;
import boltlore.book.db.Reading;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What was bought and made for an order: where it is given up, somebody must look what becomes of it.
 *
 * @param bought by each purchase order that was placed for it among others
 * @param made what was cut, coated, picked or otherwise worked on, by the stage of the work
 */
public record LeftOfOrder(List<Bought> bought, SortedMap<String, List<Made>> made) {

    private static final String BOUGHT = "bought";
    private static final int SHOWN = 4;

    /**
     * A part on a purchase order.
     *
     * @param quantity bought for this order
     * @param toCome of all that was ordered, for whomever
     */
    public record Part(String part, BigDecimal quantity, BigDecimal toCome) {}

    /** A purchase order and what of it was for this order. */
    public record Bought(String purchase, String supplier, List<Part> parts) {

        /** How many of its parts have not come in full. */
        public int open() {
            return (int)
                    parts.stream().filter(part -> part.toCome().signum() > 0).count();
        }

        /** '4 FX-N6, 2 AC-COMP and 3 parts more, of which 5 parts are still to come'. */
        public String says() {
            return some(parts.stream()
                            .map(part -> Digits.upTo(part.quantity(), 2) + " " + part.part())
                            .toList())
                    + (open() == 0
                            ? ", all of it received or not to come"
                            : parts.size() == open()
                                    ? ", still to come"
                                    : ", of which " + count(open()) + " still to come");
        }
    }

    /** A piece that was worked on, and how many of it. */
    public record Made(Piece piece, BigDecimal quantity) {}

    /** Of one order, whatever its state. */
    public static LeftOfOrder of(Reading reading, String order) {
        SortedMap<String, List<Made>> made = new TreeMap<>();
        reading.changes()
                .workOn(order)
                .forEach((piece, stages) -> stages.forEach((stage, quantity) -> {
                    if (!stage.equals(BOUGHT) && quantity.signum() > 0) {
                        made.computeIfAbsent(stage, any -> new ArrayList<>()).add(new Made(piece, quantity));
                    }
                }));
        return new LeftOfOrder(bought(reading, order, made), made);
    }

    /** Each is written down with the purchase order that it was bought by; what somebody wrote down alone has none. */
    private static List<Bought> bought(Reading reading, String order, Map<String, List<Made>> made) {
        SortedMap<String, SortedMap<String, BigDecimal>> byPurchase = new TreeMap<>();
        for (Entry entry : reading.journal().of(new Subject(OrderHappening.WHAT, order))) {
            if (entry.happening() instanceof Outcome.Sound<Happening> sound
                    && sound.value() instanceof Worked worked
                    && worked.stage().equals(BOUGHT)) {
                reading.journal()
                        .purchaseWith(entry)
                        .ifPresentOrElse(
                                purchase -> byPurchase
                                        .computeIfAbsent(purchase, any -> new TreeMap<>())
                                        .merge(worked.part(), worked.quantity(), BigDecimal::add),
                                () -> made.computeIfAbsent(BOUGHT, any -> new ArrayList<>())
                                        .add(new Made(
                                                new Piece(worked.part(), worked.revision(), worked.finish()),
                                                worked.quantity())));
            }
        }
        return byPurchase.entrySet().stream()
                .flatMap(each -> reading.stock().purchase(each.getKey()).stream()
                        .map(purchase -> bought(purchase, each.getValue())))
                .toList();
    }

    private static Bought bought(PurchaseStanding purchase, SortedMap<String, BigDecimal> parts) {
        Map<String, BigDecimal> left = purchase.open()
                ? purchase.lines().stream().collect(Collectors.toMap(LineStanding::part, LineStanding::left))
                : Map.of();
        return new Bought(
                purchase.purchase(),
                purchase.supplier(),
                parts.entrySet().stream()
                        .map(part -> new Part(
                                part.getKey(), part.getValue(), left.getOrDefault(part.getKey(), BigDecimal.ZERO)))
                        .toList());
    }

    /** What was worked on, a sentence a stage: 'Coated for it: 2 PX-12 rev. A, black'. */
    public List<String> work() {
        return made.entrySet().stream()
                .map(stage -> stage.getKey().substring(0, 1).toUpperCase(Locale.ROOT)
                        + stage.getKey().substring(1) + " for it: "
                        + some(stage.getValue().stream()
                                .map(each -> Digits.upTo(each.quantity(), 2) + " " + each.piece())
                                .toList())
                        + ".")
                .toList();
    }

    /** All of it, a sentence each; empty where nothing was bought or made. */
    public List<String> sentences() {
        List<String> all = new ArrayList<>(bought.stream()
                .map(each ->
                        "Bought for it by " + each.purchase() + " from " + each.supplier() + ": " + each.says() + ".")
                .toList());
        all.addAll(work());
        return all;
    }

    private static String some(List<String> all) {
        String shown = all.stream().limit(SHOWN).collect(Collectors.joining(", "));
        return all.size() > SHOWN ? shown + " and " + count(all.size() - SHOWN) + " more" : shown;
    }

    private static String count(int count) {
        return count == 1 ? "1 part" : count + " parts";
    }

    /** {@code bought} with each part by its purchase order, {@code made} with each piece by its stage. */
    public JsonOut.Members json() {
        return JsonOut.object()
                .put(BOUGHT, JsonOut.list(bought, LeftOfOrder::json))
                .put(
                        "made",
                        JsonOut.list(
                                List.copyOf(made.entrySet()),
                                stage -> JsonOut.object()
                                        .put("stage", stage.getKey())
                                        .put("pieces", JsonOut.list(stage.getValue(), LeftOfOrder::json))));
    }

    private static JsonOut.Members json(Bought each) {
        return JsonOut.object()
                .put("purchase", each.purchase())
                .put("supplier", each.supplier())
                .put(
                        "parts",
                        JsonOut.list(
                                each.parts(),
                                part -> JsonOut.object()
                                        .put("part", part.part())
                                        .put("quantity", part.quantity())
                                        .put("toCome", part.toCome())));
    }

    private static JsonOut.Members json(Made each) {
        return JsonOut.object()
                .put("part", each.piece().part())
                .put("revision", each.piece().revision())
                .putIfAny("finish", each.piece().finish())
                .put("quantity", each.quantity());
    }
}
