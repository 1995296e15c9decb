package boltlore.book.stores;

import boltlore.book.BuiltHappening.Fitted;
import boltlore.book.BuiltHappening.Noted;
import boltlore.book.BuiltHappening.Worked;
import boltlore.book.By;
import boltlore.book.Held;
import boltlore.book.ShopHappening;
import boltlore.book.StockHappening.Issued;
import boltlore.book.db.Book;
import boltlore.book.db.Reading;
import boltlore.book.db.Stock;
import boltlore.book.db.Writing;
import boltlore.book.db.Written;
import boltlore.book.orders.OrderDesk;
import boltlore.catalogue.Part;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import boltlore.trades.KitInWork;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Picking, line by line: each taken thing is in the book at once, so that one stops and goes on as one likes. */
public final class PickDesk {

    static final String PICKED = "picked";

    private final Book book;
    private final By by;

    public PickDesk(Book book, By by) {
        this.book = book;
        this.by = by;
    }

    /** Takes things for an order, all of them or none. */
    public Outcome<Written<List<PickLine>>> take(KitInWork kit, List<Taken> taken, String reason) {
        return book.write(
                by,
                writing -> Outcome.all(taken.stream()
                        .map(one -> mayTake(writing, kit, one).then(may -> take(writing, kit, one, reason)))
                        .toList()));
    }

    private static Outcome<PickLine> take(Writing writing, KitInWork kit, Taken taken, String reason) {
        return taken.line(writing, kit)
                .then(line -> taken.allowed(line, reason).then(allowed -> taken.rows(writing, line)))
                .then(rows -> {
                    rows.forEach(row -> issue(writing, kit, row, taken, reason));
                    String key = taken.instead().isEmpty() ? taken.part() : taken.instead();
                    return after(writing, kit, Stock.key(key, taken.finish()));
                });
    }

    /** Out of the stores, and into the kit as it is built, where a lot or a serial number tells which one it is. */
    private static void issue(Writing writing, KitInWork kit, Stock.Row row, Taken taken, String reason) {
        String order = kit.order().name();
        Held held = row.held();
        writing.add(new Issued(held, row.quantity(), order, taken.instead(), taken.concession()), reason);
        String wanted = taken.instead().isEmpty() ? taken.part() : taken.instead();
        writing.add(new Worked(order, wanted, revision(kit, wanted), held.finish(), PICKED, row.quantity()), "");
        if (!held.lot().isEmpty() || !held.serial().isEmpty()) {
            writing.add(
                    new Fitted(
                            order,
                            held.part(),
                            revision(kit, held.part()),
                            row.quantity(),
                            held.serial(),
                            held.lot(),
                            ""),
                    reason);
        }
        if (!taken.instead().isEmpty() && !taken.concession().isBlank()) {
            writing.add(
                    new Noted(
                            order,
                            Noted.CONCESSION,
                            taken.instead(),
                            taken.part() + " in the place of " + taken.instead() + ": " + taken.concession()),
                    reason);
        }
    }

    static String revision(KitInWork kit, String part) {
        Part known = kit.catalogue().parts().get(new PartNumber(part));
        return known == null ? "-" : known.revision();
    }

    /** What was told to be short is not any more as soon as all of it is there. */
    private static Outcome<PickLine> after(Writing writing, KitInWork kit, String key) {
        PickLine now = find(writing, kit, key);
        if (now.left().signum() == 0 && now.missing().signum() > 0) {
            writing.add(
                    new ShopHappening.FoundShort(
                            now.order(), now.part().number().text(), now.finish(), BigDecimal.ZERO),
                    "");
            return Outcome.sound(find(writing, kit, key));
        }
        return Outcome.sound(now);
    }

    private static PickLine find(Reading reading, KitInWork kit, String key) {
        return lines(reading, kit, key).orElseThrow();
    }

    private static Optional<PickLine> lines(Reading reading, KitInWork kit, String key) {
        return PickLine.of(reading, kit).stream()
                .filter(line -> line.key().equals(key))
                .findFirst();
    }

    /** What stands for a line that the kit has no more. */
    private static PickLine gone(KitInWork kit, Held held) {
        return new PickLine(
                kit.order().name(),
                kit.catalogue().part(new PartNumber(held.part())),
                held.finish(),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                false);
    }

    /** For a kit that has left, only what it left without, and what a service order has added to it. */
    private static Outcome<Boolean> mayTake(Reading reading, KitInWork kit, Taken taken) {
        String wanted = taken.instead().isEmpty() ? taken.part() : taken.instead();
        boolean after = reading.needs().of(kit.order().name()).stream()
                .anyMatch(need -> need.part().equals(wanted) && need.finish().equals(taken.finish()));
        return after ? Outcome.sound(true) : owed(reading, kit);
    }

    static Outcome<Boolean> owed(Reading reading, KitInWork kit) {
        return OrderDesk.standing(reading, kit.order().name())
                .then(standing -> standing.state().owed()
                        ? Outcome.sound(true)
                        : Outcome.faulty(Fault.of(
                                "order " + standing.name(),
                                "'" + standing.state().written() + "'",
                                "an order that is ordered and not shipped",
                                "")));
    }

    /** Says that the bin holds too little: all that is left of the line is missing. */
    public Outcome<Written<PickLine>> missing(KitInWork kit, String part, String finish, String reason) {
        Taken asked = new Taken(part, finish, null, "", List.of(), "", "", "");
        return book.write(
                by,
                writing -> owed(writing, kit)
                        .then(owed -> asked.line(writing, kit))
                        .then(line -> {
                            writing.add(new ShopHappening.FoundShort(line.order(), part, finish, line.left()), reason);
                            return Outcome.sound(find(writing, kit, line.key()));
                        }));
    }

    /** Gives something back that the order has got. */
    public Outcome<Written<PickLine>> back(KitInWork kit, Held held, BigDecimal quantity, String reason) {
        return book.write(by, writing -> {
            List<Issued> got = writing.stock().issuedTo(kit.order().name()).stream()
                    .filter(issued -> issued.held().in("").equals(held.in("")))
                    .toList();
            BigDecimal all = got.stream().map(Issued::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
            if (all.compareTo(quantity) < 0 || reason.isBlank()) {
                return Outcome.faulty(Fault.of(
                        "order " + kit.order().name(),
                        Digits.plain(quantity) + " of " + held.in("") + " back, of which it has got "
                                + Digits.plain(all) + (reason.isBlank() ? ", without a reason" : ""),
                        "no more than that, and a reason",
                        "Add --reason."));
            }
            Part part = kit.catalogue().parts().get(new PartNumber(held.part()));
            if (part != null && all.compareTo(quantity) != 0) {
                List<Fault> parts = StoresDesk.whole(part, quantity).faults();
                if (!parts.isEmpty()) {
                    return Outcome.faulty(parts);
                }
            }
            String instead = got.get(0).instead();
            BigDecimal left = quantity;
            for (int i = got.size() - 1; i >= 0 && left.signum() > 0; i--) {
                Issued one = got.get(i);
                BigDecimal some = one.quantity().min(left);
                left = left.subtract(some);
                GivenBack.of(
                        writing, kit, new Issued(one.held(), some, one.order(), one.instead(), ""), held.bin(), reason);
            }
            String key = Stock.key(instead.isEmpty() ? held.part() : instead, held.finish());
            return lines(writing, kit, key).map(Outcome::sound).orElseGet(() -> Outcome.sound(gone(kit, held)));
        });
    }

    /** Gives back all that an order has got. */
    public Outcome<Written<List<Held>>> backAll(KitInWork kit, String reason) {
        if (reason.isBlank()) {
            return Outcome.faulty(
                    Fault.of("order " + kit.order().name(), "no reason", "why all of it comes back", "Add --reason."));
        }
        return book.write(
                by,
                writing -> owed(writing, kit).then(owed -> {
                    List<Issued> all = writing.stock().issuedTo(kit.order().name());
                    all.forEach(issued -> GivenBack.of(writing, kit, issued, "", reason));
                    return Outcome.sound(all.stream().map(Issued::held).toList());
                }));
    }

    /** Calls an order's picking complete: not while a part is open that safety hangs on, and with a reason while any is. */
    public Outcome<Written<List<PickLine>>> complete(KitInWork kit, String reason) {
        return book.write(
                by,
                writing -> owed(writing, kit).then(owed -> {
                    List<PickLine> open = PickLine.of(writing, kit).stream()
                            .filter(line -> line.left().signum() > 0)
                            .toList();
                    List<Fault> faults = new ArrayList<>();
                    open(open.stream().filter(PickLine::safety).toList(), true).forEach(faults::add);
                    if (reason.isBlank()) {
                        open(open.stream().filter(line -> !line.safety()).toList(), false)
                                .forEach(faults::add);
                    }
                    if (!faults.isEmpty()) {
                        return Outcome.faulty(faults);
                    }
                    writing.add(
                            new ShopHappening.Picked(
                                    kit.order().name(),
                                    open.stream().map(PickLine::key).toList()),
                            reason);
                    return Outcome.sound(open);
                }));
    }

    private static Stream<Fault> open(List<PickLine> lines, boolean safety) {
        String all = lines.stream()
                .map(line -> Digits.plain(line.left()) + " " + line.part().unit() + " of " + line.key())
                .collect(Collectors.joining(", "));
        return lines.stream()
                .limit(1)
                .map(line -> Fault.of(
                        "order " + line.order(),
                        (safety ? "parts on which safety hangs, not picked: " : "parts not picked: ") + all,
                        safety ? "all of them in the kit" : "all of them, or a reason why the kit goes on without",
                        safety ? "The order cannot be called complete without them." : "Pick them, or add --reason."));
    }
}
