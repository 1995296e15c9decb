package boltlore.book.stores;

import boltlore.book.Held;
import boltlore.book.PurchaseStanding;
import boltlore.book.PurchaseStanding.LineStanding;
import boltlore.book.StockHappening;
import boltlore.book.db.Stock;
import boltlore.book.db.Writing;
import boltlore.book.stores.StoresDesk.Arrival;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.catalogue.Tracked;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Takes in what stands on a delivery note, line by line: what was not ordered, more than is still to come, or what lacks its
 * numbers, is refused.
 */
final class GoodsIn {

    private final Writing writing;
    private final Map<Held, BigDecimal> toMake;
    private final String reason;

    /**
     * @param toMake what is still to be made, by part in its finish
     * @param reason why more is taken in
     */
    GoodsIn(Writing writing, Map<Held, BigDecimal> toMake, String reason) {
        this.writing = writing;
        this.toMake = new HashMap<>(toMake);
        this.reason = reason;
    }

    /** Whether the workshop has made it itself, so that the plan says how much of it is wanted. */
    static boolean isMade(Arrival arrival, Part part) {
        return arrival.purchase().isEmpty() && part.source() == Source.MAKE;
    }

    Outcome<List<Held>> receive(Arrival arrival, Part part) {
        List<Fault> faults = new ArrayList<>(tracking(part, arrival));
        faults.addAll(StoresDesk.bin(arrival.bin()).faults());
        Map<String, String> known =
                arrival.serials().isEmpty() ? Map.of() : writing.stock().serials(arrival.part());
        arrival.serials().stream()
                .filter(serial -> known.containsKey(small(serial)))
                .map(serial -> Fault.of(
                        "part " + arrival.part(),
                        "serial number " + serial + ", which came in before"
                                + (known.containsValue(serial) ? "" : " as " + known.get(small(serial))),
                        "each serial number once",
                        "Read it again on the piece; one that came back from an order goes by 'pick back'."))
                .forEach(faults::add);
        if (!arrival.purchase().isEmpty()) {
            faults.addAll(ordered(arrival));
        } else if (isMade(arrival, part)) {
            faults.addAll(wanted(arrival));
        }
        if (!faults.isEmpty()) {
            return Outcome.faulty(faults);
        }
        List<Held> held = held(arrival, part);
        BigDecimal each = arrival.serials().isEmpty() ? arrival.quantity() : BigDecimal.ONE;
        held.forEach(one ->
                writing.add(new StockHappening.Received(one, each, arrival.purchase(), part.revision()), reason));
        if (isMade(arrival, part) && arrival.finish().isEmpty()) {
            part.contains().forEach(child -> buildIn(child, arrival.quantity(), part));
        }
        return Outcome.sound(held);
    }

    /** What an assembly is made of leaves the stores with it, as far as it lies there: it may have come straight from the saw. */
    private void buildIn(Contained child, BigDecimal assemblies, Part into) {
        BigDecimal left = child.quantity().multiply(assemblies);
        for (Stock.Row row : writing.stock().of(child.part().text())) {
            BigDecimal some = row.quantity().min(left);
            if (some.signum() > 0) {
                writing.add(
                        new StockHappening.BuiltIn(
                                row.held(), some, into.number().text()),
                        "");
                left = left.subtract(some);
            }
        }
    }

    /** Whoever types a number twice, once in small letters, means the same piece. */
    private static String small(String serial) {
        return serial.toLowerCase(Locale.ROOT);
    }

    private static List<Held> held(Arrival arrival, Part part) {
        String bin = arrival.bin().isEmpty() ? part.bin() : arrival.bin();
        Held one = new Held(arrival.part(), arrival.finish(), arrival.lot(), "", bin);
        return arrival.serials().isEmpty()
                ? List.of(one)
                : arrival.serials().stream()
                        .map(serial -> new Held(one.part(), one.finish(), one.lot(), serial, bin))
                        .toList();
    }

    /** Lots and serial numbers as the part asks for them. */
    private static List<Fault> tracking(Part part, Arrival arrival) {
        String subject = "part " + part.number();
        BigDecimal quantity = arrival.quantity();
        List<Fault> faults = new ArrayList<>(StoresDesk.whole(part, quantity).faults());
        if (part.tracked() == Tracked.LOT && arrival.lot().isEmpty()) {
            faults.add(Fault.of(subject, "no lot", "the lot that stands on the goods", "Add --lot."));
        }
        Set<String> different = arrival.serials().stream().map(GoodsIn::small).collect(Collectors.toSet());
        boolean asMany = quantity.compareTo(BigDecimal.valueOf(different.size())) == 0
                && different.size() == arrival.serials().size();
        if (!asMany && (part.tracked() == Tracked.SERIAL || !arrival.serials().isEmpty())) {
            faults.add(Fault.of(
                    subject,
                    different.size() + " different serial numbers for " + Digits.plain(quantity) + " pieces",
                    "one for each piece",
                    "Add --serial for each."));
        }
        return faults;
    }

    private List<Fault> ordered(Arrival arrival) {
        PurchaseStanding purchase = writing.stock().purchase(arrival.purchase()).orElse(null);
        if (purchase == null) {
            return List.of(Fault.of(
                    "",
                    "the purchase order '" + arrival.purchase() + "'",
                    "one of the book",
                    "'boltlore purchase list' shows them."));
        }
        LineStanding line = purchase.lines().stream()
                .filter(each -> each.part().equals(arrival.part()))
                .findFirst()
                .orElse(null);
        String subject = "purchase order " + purchase.purchase();
        if (line == null) {
            return List.of(Fault.of(
                    subject,
                    "part " + arrival.part() + ", which is not on it",
                    purchase.lines().stream().map(LineStanding::part).collect(Collectors.joining(", ")),
                    "Put the goods aside and ask the supplier; nothing was taken in."));
        }
        return more(arrival, line.left())
                ? List.of(Fault.of(
                        subject,
                        Digits.plain(arrival.quantity()) + " of " + arrival.part() + ", of which "
                                + Digits.plain(line.left()) + " are still to come",
                        "no more than that",
                        "Send the rest back, or take it with --over and say why with --reason."))
                : List.of();
    }

    private boolean more(Arrival arrival, BigDecimal left) {
        return arrival.quantity().compareTo(left) > 0 && (!arrival.over() || reason.isBlank());
    }

    /** What is made past what orders and stores ask for is made for nobody; often the same pieces are written down twice. */
    private List<Fault> wanted(Arrival arrival) {
        String key = Stock.key(arrival.part(), arrival.finish());
        Held item = ToMake.item(arrival.part(), arrival.finish());
        BigDecimal left = toMake.getOrDefault(item, BigDecimal.ZERO);
        toMake.put(item, left.subtract(arrival.quantity()).max(BigDecimal.ZERO));
        return more(arrival, left)
                ? List.of(
                        Fault.of(
                                "part " + arrival.part(),
                                Digits.plain(arrival.quantity()) + " of " + key + " made here, of which "
                                        + Digits.plain(left) + " are still to be made",
                                "no more than that",
                                "Look whether they are taken in already; else take them with --over and say why with --reason."))
                : List.of();
    }
}
