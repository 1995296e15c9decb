package boltlore.book.stores;

import boltlore.book.By;
import boltlore.book.Held;
import boltlore.book.PurchaseStanding;
import boltlore.book.PurchaseStanding.LineStanding;
import boltlore.book.StockHappening;
import boltlore.book.db.Book;
import boltlore.book.db.Reading;
import boltlore.book.db.Stock;
import boltlore.book.db.Writing;
import boltlore.book.db.Written;
import boltlore.book.orders.OrderDesk;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.catalogue.Tracked;
import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import boltlore.trades.picking.Units;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Goods in, counting, moving, scrapping, keeping for an order. Nothing is ever taken that is not there. */
public final class StoresDesk {

    private final Book book;
    private final By by;
    private final Catalogue catalogue;

    public StoresDesk(Book book, By by, Catalogue catalogue) {
        this.book = book;
        this.by = by;
        this.catalogue = catalogue;
    }

    /**
     * What stands on a delivery note.
     *
     * @param quantity in the part's unit; of pieces with serial numbers as many as these
     * @param purchase number of the purchase order, or empty for what was made here or found
     * @param bin empty for the part's own
     * @param over whether more than was ordered is taken in
     */
    public record Arrival(
            String part,
            String finish,
            BigDecimal quantity,
            String purchase,
            String lot,
            List<String> serials,
            String bin,
            boolean over) {}

    /** Takes goods in, all of them or none: part of an order, all of it, or where that is said more; a wrong part is refused. */
    public Outcome<Written<List<Held>>> receive(List<Arrival> arrivals, String reason) {
        return Outcome.all(arrivals.stream()
                        .map(arrival -> part(catalogue, arrival.part()))
                        .toList())
                .then(parts -> book.write(
                        by,
                        writing -> Outcome.all(IntStream.range(0, parts.size())
                                        .mapToObj(i -> receive(writing, arrivals.get(i), parts.get(i), reason))
                                        .toList())
                                .then(all -> Outcome.sound(
                                        all.stream().flatMap(List::stream).toList()))));
    }

    private Outcome<List<Held>> receive(Writing writing, Arrival arrival, Part part, String reason) {
        List<Fault> faults = new ArrayList<>(tracking(part, arrival));
        arrival.serials().stream()
                .filter(serial -> writing.stock().knowsSerial(arrival.part(), serial))
                .map(serial -> Fault.of(
                        "part " + arrival.part(),
                        "serial number " + serial + ", which came in before",
                        "each serial number once",
                        "Read it again on the piece; one that came back from an order goes by 'pick back'."))
                .forEach(faults::add);
        if (!arrival.purchase().isEmpty()) {
            faults.addAll(ordered(writing, arrival, reason));
        }
        if (!faults.isEmpty()) {
            return Outcome.faulty(faults);
        }
        List<Held> held = held(arrival, part);
        BigDecimal each = arrival.serials().isEmpty() ? arrival.quantity() : BigDecimal.ONE;
        held.forEach(one ->
                writing.add(new StockHappening.Received(one, each, arrival.purchase(), part.revision()), reason));
        if (arrival.purchase().isEmpty()
                && part.source() == Source.MAKE
                && arrival.finish().isEmpty()) {
            part.contains().forEach(child -> buildIn(writing, child, arrival.quantity(), part));
        }
        return Outcome.sound(held);
    }

    /** What an assembly is made of leaves the stores with it, as far as it lies there: it may have come straight from the saw. */
    private static void buildIn(Writing writing, Contained child, BigDecimal assemblies, Part into) {
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
        List<Fault> faults = new ArrayList<>();
        String subject = "part " + part.number();
        BigDecimal quantity = arrival.quantity();
        boolean whole = quantity.stripTrailingZeros().scale() <= 0;
        if (!whole && !Units.measured(part.unit())) {
            faults.add(Fault.of(subject, Digits.plain(quantity) + " " + part.unit(), "whole pieces", ""));
        }
        if (part.tracked() == Tracked.LOT && arrival.lot().isEmpty()) {
            faults.add(Fault.of(subject, "no lot", "the lot that stands on the goods", "Add --lot."));
        }
        Set<String> different = new HashSet<>(arrival.serials());
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

    private static List<Fault> ordered(Writing writing, Arrival arrival, String reason) {
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
        boolean more = arrival.quantity().compareTo(line.left()) > 0;
        if (more && (!arrival.over() || reason.isBlank())) {
            return List.of(Fault.of(
                    subject,
                    Digits.plain(arrival.quantity()) + " of " + arrival.part() + ", of which "
                            + Digits.plain(line.left()) + " are still to come",
                    "no more than that",
                    "Send the rest back, or take it with --over and say why with --reason."));
        }
        return List.of();
    }

    /** Says how much lies there; what differs from the book needs a reason. */
    public Outcome<Written<StockHappening.Counted>> count(Held asked, BigDecimal counted, String reason) {
        return known(asked)
                .then(held -> book.write(by, writing -> {
                    BigDecimal booked = writing.stock().lying(held);
                    if (booked.compareTo(counted) != 0 && reason.isBlank()) {
                        return Outcome.faulty(Fault.of(
                                held.toString(),
                                "a count of " + Digits.plain(counted) + " where the book has " + Digits.plain(booked),
                                "why it differs",
                                "Count once more, and say with --reason what was found."));
                    }
                    StockHappening.Counted entry = new StockHappening.Counted(held, counted, booked);
                    writing.add(entry, reason);
                    return Outcome.sound(entry);
                }));
    }

    /** Lays it into another bin. */
    public Outcome<Written<StockHappening.Moved>> move(Held asked, BigDecimal quantity, String to) {
        return known(asked)
                .then(held -> book.write(
                        by,
                        writing -> there(writing, held, quantity).then(enough -> {
                            StockHappening.Moved entry = new StockHappening.Moved(held, quantity, to);
                            writing.add(entry, "");
                            return Outcome.sound(entry);
                        })));
    }

    /** Throws it away, and says why. */
    public Outcome<Written<StockHappening.Scrapped>> scrap(Held asked, BigDecimal quantity, String reason) {
        if (reason.isBlank()) {
            return Outcome.faulty(Fault.of("part " + asked.part(), "no reason", "why it is scrapped", "Add --reason."));
        }
        return known(asked)
                .then(held -> book.write(
                        by,
                        writing -> there(writing, held, quantity).then(enough -> {
                            StockHappening.Scrapped entry = new StockHappening.Scrapped(held, quantity);
                            writing.add(entry, reason);
                            return Outcome.sound(entry);
                        })));
    }

    /** Keeps so much of a part for an order that is owed, as far as nobody else has it kept; 0 lets it go. */
    public Outcome<Written<StockHappening.Reserved>> reserve(String order, Held asked, BigDecimal quantity) {
        return part(catalogue, asked.part())
                .then(part -> book.write(
                        by,
                        writing -> OrderDesk.standing(writing, order).then(standing -> {
                            if (!standing.state().owed()) {
                                return Outcome.faulty(Fault.of(
                                        "order " + order,
                                        "'" + standing.state().written() + "'",
                                        "an order that is owed",
                                        ""));
                            }
                            BigDecimal free = free(writing, asked.part(), asked.finish(), order);
                            if (free.compareTo(quantity) < 0) {
                                return Outcome.faulty(
                                        tooLittle(Stock.key(asked.part(), asked.finish()), quantity, free));
                            }
                            StockHappening.Reserved entry = new StockHappening.Reserved(
                                    new Held(asked.part(), asked.finish(), "", "", ""), quantity, order);
                            writing.add(entry, "");
                            return Outcome.sound(entry);
                        })));
    }

    /** What lies there of a part and is kept for no other order. */
    static BigDecimal free(Reading reading, String part, String finish, String order) {
        BigDecimal lying = reading.stock().of(part).stream()
                .filter(row -> row.held().finish().equals(finish))
                .map(Stock.Row::quantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return reading.stock().reservations().stream()
                .filter(kept -> kept.part().equals(part)
                        && kept.finish().equals(finish)
                        && !kept.order().equals(order))
                .map(Stock.Reservation::quantity)
                .reduce(lying, BigDecimal::subtract)
                .max(BigDecimal.ZERO);
    }

    /** Whether so much lies there just so. */
    static Outcome<BigDecimal> there(Reading reading, Held held, BigDecimal quantity) {
        BigDecimal lying = reading.stock().lying(held);
        return lying.compareTo(quantity) < 0
                ? Outcome.faulty(tooLittle(held.toString(), quantity, lying))
                : Outcome.sound(lying);
    }

    static Fault tooLittle(String what, BigDecimal wanted, BigDecimal lying) {
        return Fault.of(
                what,
                Digits.plain(wanted) + " wanted where " + Digits.plain(lying) + " may be taken",
                "no more than that",
                "Look with 'boltlore stock list'; if more lies there, 'boltlore stock count' says so.");
    }

    /** In its own bin, where none is said. */
    private Outcome<Held> known(Held asked) {
        return part(catalogue, asked.part())
                .then(part -> Outcome.sound(asked.bin().isEmpty() ? asked.in(part.bin()) : asked));
    }

    /** The part of that number. */
    static Outcome<Part> part(Catalogue catalogue, String number) {
        Part part = catalogue.parts().get(new PartNumber(number));
        return part != null
                ? Outcome.sound(part)
                : Outcome.faulty(Fault.of(
                        "",
                        "the part '" + number + "'",
                        "a part of the catalogue",
                        Nearest.advice(
                                number,
                                catalogue.parts().keySet().stream()
                                        .map(PartNumber::text)
                                        .toList(),
                                "'boltlore parts WORD' looks for one.")));
    }
}
