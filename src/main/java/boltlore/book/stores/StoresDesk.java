package boltlore.book.stores;

import boltlore.book.By;
import boltlore.book.Entry;
import boltlore.book.Happening;
import boltlore.book.Held;
import boltlore.book.StockHappening;
import boltlore.book.Subject;
import boltlore.book.db.Book;
import boltlore.book.db.Reading;
import boltlore.book.db.Stock;
import boltlore.book.db.Writing;
import boltlore.book.db.Written;
import boltlore.book.orders.Bench;
import boltlore.book.orders.OrderDesk;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import boltlore.trades.picking.Units;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Goods in, counting, moving, scrapping, keeping for an order. Nothing is ever taken that is not there. */
public final class StoresDesk {

    private final Book book;
    private final By by;
    private final Bench bench;
    private final Catalogue catalogue;

    /** @param bench the catalogue of today: whoever was ordered by an older one is found by it */
    public StoresDesk(Book book, By by, Bench bench) {
        this.book = book;
        this.by = by;
        this.bench = bench;
        this.catalogue = bench.catalogue();
    }

    /**
     * What stands on a delivery note.
     *
     * @param quantity in the part's unit; of pieces with serial numbers as many as these
     * @param purchase number of the purchase order, or empty for what was made here or found
     * @param bin empty for the part's own
     * @param over whether more than was ordered, or is still to be made, is taken in
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
                .then(parts -> ToMake.of(book, by, bench, arrivals, parts)
                        .then(toMake -> book.write(by, writing -> {
                            GoodsIn in = new GoodsIn(writing, toMake.lessWhatCameSince(writing), reason);
                            return Outcome.all(IntStream.range(0, parts.size())
                                            .mapToObj(i -> in.receive(arrivals.get(i), parts.get(i)))
                                            .toList())
                                    .then(all -> Outcome.sound(
                                            all.stream().flatMap(List::stream).toList()));
                        })));
    }

    /**
     * Takes a receipt back that was written down wrongly, as long as all of it lies where it was laid; its purchase order
     * waits for it again.
     *
     * @param receipt number of its entry
     */
    public Outcome<Written<StockHappening.Unreceived>> unreceive(long receipt, String reason) {
        String subject = "entry " + receipt;
        if (reason.isBlank()) {
            return Outcome.faulty(Fault.of(subject, "no reason", "what was wrong with it", ""));
        }
        return book.write(by, writing -> {
            StockHappening.Received wrong = writing.journal()
                    .entry(receipt)
                    .map(Entry::happening)
                    .flatMap(StoresDesk::received)
                    .orElse(null);
            if (wrong == null || takenBack(ofPart(writing, wrong.held().part())).contains(receipt)) {
                return Outcome.faulty(Fault.of(subject, "no receipt that stands", "one that was not taken back", ""));
            }
            return OnShelf.there(writing, wrong.held(), wrong.quantity()).then(enough -> {
                StockHappening.Unreceived entry =
                        new StockHappening.Unreceived(wrong.held(), wrong.quantity(), wrong.purchase(), receipt);
                writing.add(entry, reason);
                return Outcome.sound(entry);
            });
        });
    }

    static Optional<StockHappening.Received> received(Outcome<Happening> happening) {
        return happening instanceof Outcome.Sound<Happening> sound
                        && sound.value() instanceof StockHappening.Received received
                ? Optional.of(received)
                : Optional.empty();
    }

    private static Set<Long> takenBack(List<Entry> ofPart) {
        return ofPart.stream()
                .flatMap(entry -> entry.happening() instanceof Outcome.Sound<Happening> sound
                                && sound.value() instanceof StockHappening.Unreceived back
                        ? Stream.of(back.receipt())
                        : Stream.empty())
                .collect(Collectors.toSet());
    }

    static List<Entry> ofPart(Reading reading, String part) {
        return reading.journal().of(new Subject(StockHappening.WHAT, part));
    }

    /** What came in of a part since then and was not taken back, with its entry, the last first. */
    public static List<Entry> receipts(Reading reading, String part, Instant since) {
        List<Entry> lately = ofPart(reading, part).stream()
                .filter(entry -> entry.stamp().at().isAfter(since))
                .toList();
        Set<Long> back = takenBack(lately);
        List<Entry> all = new ArrayList<>(lately.stream()
                .filter(entry -> !back.contains(entry.number()))
                .filter(entry -> received(entry.happening()).isPresent())
                .toList());
        Collections.reverse(all);
        return all;
    }

    /** Says how much lies there; what differs from the book needs a reason. */
    public Outcome<Written<StockHappening.Counted>> count(Held asked, BigDecimal counted, String reason) {
        return known(asked, counted)
                .then(held -> bin(asked.bin()).then(fine -> Outcome.sound(held)))
                .then(held -> book.write(by, writing -> {
                    BigDecimal booked = writing.stock().lying(held);
                    String same = writing.stock()
                            .serials(held.part())
                            .getOrDefault(held.serial().toLowerCase(Locale.ROOT), held.serial());
                    if (booked.signum() == 0 && !same.equals(held.serial())) {
                        return Outcome.faulty(Fault.of(
                                held.toString(), "a piece that came in as " + same, "its number as it came in", ""));
                    }
                    if (booked.compareTo(counted) != 0 && reason.isBlank()) {
                        return Outcome.faulty(Fault.of(
                                held.toString(),
                                "a count of " + Digits.plain(counted) + " where the book has " + Digits.plain(booked),
                                "why it differs",
                                "Count once more, and say with --reason what was found."));
                    }
                    return counted.compareTo(booked) < 0
                            ? OnShelf.there(writing, held, booked.subtract(counted))
                                    .then(left -> counted(writing, held, counted, booked, reason))
                            : counted(writing, held, counted, booked, reason);
                }));
    }

    private static Outcome<StockHappening.Counted> counted(
            Writing writing, Held held, BigDecimal counted, BigDecimal booked, String reason) {
        StockHappening.Counted entry = new StockHappening.Counted(held, counted, booked);
        writing.add(entry, reason);
        return Outcome.sound(entry);
    }

    /** Lays it into another bin. */
    public Outcome<Written<StockHappening.Moved>> move(Held asked, BigDecimal quantity, String to) {
        return known(asked, quantity)
                .then(held -> bin(to).then(fine -> Outcome.sound(held)))
                .then(held -> book.write(
                        by,
                        writing -> OnShelf.there(writing, held, quantity).then(enough -> {
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
        return known(asked, quantity)
                .then(held -> book.write(
                        by,
                        writing -> OnShelf.there(writing, held, quantity).then(enough -> {
                            StockHappening.Scrapped entry = new StockHappening.Scrapped(held, quantity);
                            writing.add(entry, reason);
                            return Outcome.sound(entry);
                        })));
    }

    /** Keeps so much of a part for an order that is owed, as far as nobody else has it kept; 0 lets it go. */
    public Outcome<Written<StockHappening.Reserved>> reserve(String order, Held asked, BigDecimal quantity) {
        return part(catalogue, asked.part())
                .then(part -> whole(part, quantity))
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
                            BigDecimal free = OnShelf.free(writing, asked.part(), asked.finish(), order);
                            if (free.compareTo(quantity) < 0) {
                                return Outcome.faulty(
                                        OnShelf.tooLittle(Stock.key(asked.part(), asked.finish()), quantity, free));
                            }
                            StockHappening.Reserved entry = new StockHappening.Reserved(
                                    new Held(asked.part(), asked.finish(), "", "", ""), quantity, order);
                            writing.add(entry, "");
                            return Outcome.sound(entry);
                        })));
    }

    /** In its own bin, where none is said; faulty where so much is no whole number of what is counted in pieces. */
    private Outcome<Held> known(Held asked, BigDecimal quantity) {
        return part(catalogue, asked.part())
                .then(part -> whole(part, quantity))
                .then(part -> Outcome.sound(asked.bin().isEmpty() ? asked.in(part.bin()) : asked));
    }

    /** A bin's name stands on labels, in file names and in addresses: no path, whoever types it. */
    static Outcome<String> bin(String bin) {
        return bin.contains("/") || bin.contains("\\") || bin.contains("..")
                ? Outcome.faulty(Fault.of("", "the bin '" + bin + "'", "a bin such as F-01-02-A-03, no path", ""))
                : Outcome.sound(bin);
    }

    /** Nothing that is counted in pieces is handed out, counted or thrown away in parts of one. */
    static Outcome<Part> whole(Part part, BigDecimal quantity) {
        return Units.measured(part.unit()) || quantity.stripTrailingZeros().scale() <= 0
                ? Outcome.sound(part)
                : Outcome.faulty(Fault.of(
                        "part " + part.number(), Digits.plain(quantity) + " " + part.unit(), "whole pieces", ""));
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
