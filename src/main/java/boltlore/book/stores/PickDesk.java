package boltlore.book.stores;

import boltlore.bill.Item;
import boltlore.bill.Origin;
import boltlore.book.BuiltHappening.Fitted;
import boltlore.book.BuiltHappening.Noted;
import boltlore.book.BuiltHappening.TakenOut;
import boltlore.book.BuiltHappening.Worked;
import boltlore.book.By;
import boltlore.book.Held;
import boltlore.book.ShopHappening;
import boltlore.book.StockHappening;
import boltlore.book.StockHappening.Issued;
import boltlore.book.db.Book;
import boltlore.book.db.Reading;
import boltlore.book.db.Stock;
import boltlore.book.db.Writing;
import boltlore.book.db.Written;
import boltlore.book.orders.OrderDesk;
import boltlore.catalogue.JointFacts;
import boltlore.catalogue.Part;
import boltlore.catalogue.Tracked;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.trades.KitInWork;
import boltlore.trades.picking.CoatedRow;
import boltlore.trades.picking.PickRow;
import boltlore.trades.picking.PickingList;
import boltlore.trades.picking.PickingTrade;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Picking, line by line: each taken thing is in the book at once, so that one stops and goes on as one likes. */
public final class PickDesk {

    /** Cautions of parts that a kit is not complete without, whoever agrees: people are hurt where one is missing. */
    private static final Set<String> HURTS = Set.of("high-voltage", "lithium");

    private static final String PICKED = "picked";

    private final Book book;
    private final By by;

    public PickDesk(Book book, By by) {
        this.book = book;
        this.by = by;
    }

    /**
     * What one order gets of one part in one finish.
     *
     * @param wanted with the spares for its bags
     * @param got of it, or of what stands in for it
     * @param missing as it was told that the bin holds too little
     * @param safety whether drive, battery, steering, brakes or people hang on it, or high voltage
     */
    public record Line(
            String order, Part part, String finish, BigDecimal wanted, BigDecimal got, BigDecimal missing, boolean safety) {

        public BigDecimal left() {
            return wanted.subtract(got).max(BigDecimal.ZERO);
        }

        public String key() {
            return Stock.key(part.number().text(), finish);
        }
    }

    /** All lines of a kit with what the order has got of each. */
    public static List<Line> lines(Reading reading, KitInWork kit) {
        String order = kit.order().name();
        Map<String, BigDecimal> got = new TreeMap<>();
        reading.stock().issuedTo(order).forEach(issued -> {
            String for_ = issued.instead().isEmpty() ? issued.held().part() : issued.instead();
            got.merge(Stock.key(for_, issued.held().finish()), issued.quantity(), BigDecimal::add);
        });
        Map<String, BigDecimal> missing = reading.stock().shortOf(order);
        Set<String> safety = safetyParts(kit);
        return wanted(kit)
                .map(line -> new Line(
                        order,
                        line.part(),
                        line.finish(),
                        line.wanted(),
                        got.getOrDefault(line.key(), BigDecimal.ZERO),
                        missing.getOrDefault(line.key(), BigDecimal.ZERO),
                        safety.contains(line.part().number().text())))
                .toList();
    }

    private static Stream<Line> wanted(KitInWork kit) {
        PickingList list = PickingTrade.list(kit);
        Map<String, Line> lines = new TreeMap<>();
        Stream.concat(list.walk().stream(), list.fromCoating().stream().map(CoatedRow::row))
                .forEach(row -> add(lines, kit, row.part(), row.finish(), row.quantity().add(spares(row))));
        list.extras().stream()
                .filter(extra -> extra.part() != null && !extra.extra().suppliedByCustomer())
                .forEach(extra -> add(
                        lines,
                        kit,
                        Objects.requireNonNull(extra.part()),
                        extra.part().coat() == null ? "" : extra.extra().finish(),
                        extra.extra().quantity()));
        return lines.values().stream();
    }

    private static BigDecimal spares(PickRow row) {
        return row.spares();
    }

    private static void add(Map<String, Line> lines, KitInWork kit, Part part, String finish, BigDecimal more) {
        Line line = new Line(kit.order().name(), part, finish, more, BigDecimal.ZERO, BigDecimal.ZERO, false);
        lines.merge(
                line.key(),
                line,
                (one, other) -> new Line(
                        one.order(),
                        one.part(),
                        one.finish(),
                        one.wanted().add(other.wanted()),
                        BigDecimal.ZERO,
                        BigDecimal.ZERO,
                        false));
    }

    /** Parts at joints that are signed for, and those whose cautions say so. */
    private static Set<String> safetyParts(KitInWork kit) {
        List<JointFacts> signed =
                kit.family().joints().stream().filter(JointFacts::safety).toList();
        Set<PositionName> positions =
                signed.stream().map(JointFacts::position).filter(Objects::nonNull).collect(Collectors.toSet());
        Set<String> shared = signed.stream().map(JointFacts::joint).filter(joint -> !joint.isEmpty()).collect(Collectors.toSet());
        return kit.bill()
                .picked()
                .filter(item -> positions.contains(item.position().name()) || at(item, shared) || hurts(item))
                .map(item -> item.part().number().text())
                .collect(Collectors.toSet());
    }

    private static boolean at(Item item, Set<String> joints) {
        return item.origin() instanceof Origin.AtJoint joint && joints.contains(joint.joint());
    }

    private static boolean hurts(Item item) {
        return item.all().anyMatch(each -> each.part().cautions().stream().anyMatch(HURTS::contains));
    }

    /**
     * What a picker has in the hand.
     *
     * @param part that is taken; where it stands in for another, that is named
     * @param quantity 0 for all that is left
     * @param bin where it is taken from; empty for wherever it lies
     * @param concession words or number under which another part may be taken; asked for unless the catalogue names it as an
     *     alternate
     */
    public record Taken(
            String part,
            String finish,
            BigDecimal quantity,
            String lot,
            List<String> serials,
            String bin,
            String instead,
            String concession) {}

    /** Takes things for an order, all of them or none. */
    public Outcome<Written<List<Line>>> take(KitInWork kit, List<Taken> taken, String reason) {
        return book.write(by, writing -> owed(writing, kit)
                .then(owed -> Outcome.all(taken.stream()
                        .map(one -> take(writing, kit, one, reason))
                        .toList())));
    }

    private static Outcome<Line> take(Writing writing, KitInWork kit, Taken taken, String reason) {
        return line(writing, kit, taken)
                .then(line -> allowed(line, taken).then(allowed -> rows(writing, line, taken)))
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
        writing.add(
                new Worked(order, wanted, revision(kit, wanted), held.finish(), PICKED, row.quantity()), "");
        if (!held.lot().isEmpty() || !held.serial().isEmpty()) {
            writing.add(
                    new Fitted(order, held.part(), revision(kit, held.part()), row.quantity(), held.serial(), held.lot(), ""),
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

    private static String revision(KitInWork kit, String part) {
        Part known = kit.catalogue().parts().get(new PartNumber(part));
        return known == null ? "-" : known.revision();
    }

    /** What was told to be short is not any more as soon as all of it is there. */
    private static Outcome<Line> after(Writing writing, KitInWork kit, String key) {
        Line now = find(writing, kit, key);
        if (now.left().signum() == 0 && now.missing().signum() > 0) {
            writing.add(
                    new ShopHappening.Short(
                            now.order(), now.part().number().text(), now.finish(), BigDecimal.ZERO),
                    "");
            return Outcome.sound(find(writing, kit, key));
        }
        return Outcome.sound(now);
    }

    private static Line find(Reading reading, KitInWork kit, String key) {
        return lines(reading, kit).stream()
                .filter(line -> line.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static Outcome<Boolean> owed(Reading reading, KitInWork kit) {
        return OrderDesk.standing(reading, kit.order().name()).then(standing -> standing.state().owed()
                ? Outcome.sound(true)
                : Outcome.faulty(Fault.of(
                        "order " + standing.name(),
                        "'" + standing.state().written() + "'",
                        "an order that is ordered and not shipped",
                        "")));
    }

    private static Outcome<Line> line(Reading reading, KitInWork kit, Taken taken) {
        String wanted = taken.instead().isEmpty() ? taken.part() : taken.instead();
        List<Line> ofPart = lines(reading, kit).stream()
                .filter(line -> line.part().number().text().equals(wanted))
                .toList();
        String subject = "order " + kit.order().name();
        if (ofPart.isEmpty()) {
            return Outcome.faulty(Fault.of(
                    subject,
                    "part " + wanted + ", which its kit does not hold",
                    "a part of its picking list",
                    "'boltlore pick list " + kit.order().name() + "' shows them; put this one back."));
        }
        return ofPart.stream()
                .filter(line -> line.finish().equals(taken.finish()))
                .findFirst()
                .map(Outcome::sound)
                .orElseGet(() -> Outcome.faulty(Fault.of(
                        subject,
                        wanted + (taken.finish().isEmpty() ? " without a finish" : " in " + taken.finish()),
                        ofPart.stream().map(Line::key).collect(Collectors.joining(" or ")),
                        "Say which with --finish.")));
    }

    /** Another part only as an alternate of the catalogue or under a concession; never more than is left. */
    private static Outcome<Line> allowed(Line line, Taken taken) {
        boolean alternate = line.part().upkeep().alternates().stream()
                .anyMatch(each -> each.part().text().equals(taken.part()));
        if (!taken.instead().isEmpty() && !alternate && taken.concession().isBlank()) {
            return Outcome.faulty(Fault.of(
                    "order " + line.order(),
                    taken.part() + " in the place of " + taken.instead() + ", which the catalogue does not allow",
                    "an alternate of it, or a concession",
                    "Ask the engineer, and name the concession with --concession."));
        }
        BigDecimal quantity = quantity(line, taken);
        if (quantity.compareTo(line.left()) > 0 || quantity.signum() <= 0) {
            return Outcome.faulty(Fault.of(
                    "order " + line.order(),
                    Digits.plain(quantity) + " of " + line.key() + ", of which " + Digits.plain(line.left())
                            + " are left to pick",
                    "no more than that",
                    ""));
        }
        return Outcome.sound(line);
    }

    private static BigDecimal quantity(Line line, Taken taken) {
        if (!taken.serials().isEmpty()) {
            return BigDecimal.valueOf(taken.serials().size());
        }
        return taken.quantity().signum() == 0 ? line.left() : taken.quantity();
    }

    /** From which bins and lots it comes; faulty where that must be said, or too little lies there. */
    private static Outcome<List<Stock.Row>> rows(Reading reading, Line line, Taken taken) {
        BigDecimal quantity = quantity(line, taken);
        BigDecimal free = StoresDesk.free(reading, taken.part(), taken.finish(), line.order());
        if (free.compareTo(quantity) < 0) {
            return Outcome.faulty(
                    StoresDesk.tooLittle(Stock.key(taken.part(), taken.finish()), quantity, free));
        }
        List<Stock.Row> fitting = reading.stock().of(taken.part()).stream()
                .filter(row -> row.held().finish().equals(taken.finish()))
                .filter(row -> taken.lot().isEmpty() || row.held().lot().equals(taken.lot()))
                .filter(row -> taken.bin().isEmpty() || row.held().bin().equals(taken.bin()))
                .filter(row -> taken.serials().isEmpty()
                        || taken.serials().contains(row.held().serial()))
                .sorted(Comparator.comparing(
                        row -> !row.held().bin().equals(line.part().bin())))
                .toList();
        return said(line, taken, fitting).then(clear -> drawn(taken, quantity, fitting));
    }

    private static Outcome<Line> said(Line line, Taken taken, List<Stock.Row> fitting) {
        Tracked tracked = line.part().tracked();
        String what = "part " + taken.part();
        if (tracked == Tracked.SERIAL && taken.serials().isEmpty()) {
            return Outcome.faulty(Fault.of(what, "no serial number", "that of each piece", "Scan it, or add --serial."));
        }
        long lots = fitting.stream().map(row -> row.held().lot()).distinct().count();
        return tracked == Tracked.LOT && taken.lot().isEmpty() && lots > 1
                ? Outcome.faulty(Fault.of(
                        what,
                        "no lot, where " + lots + " lie there",
                        fitting.stream().map(row -> row.held().lot()).distinct().collect(Collectors.joining(", ")),
                        "Read it on the goods, and add --lot."))
                : Outcome.sound(line);
    }

    private static Outcome<List<Stock.Row>> drawn(Taken taken, BigDecimal quantity, List<Stock.Row> fitting) {
        List<Stock.Row> drawn = new ArrayList<>();
        BigDecimal left = quantity;
        for (Stock.Row row : fitting) {
            BigDecimal some = row.quantity().min(left);
            if (some.signum() > 0) {
                drawn.add(new Stock.Row(row.held(), some));
                left = left.subtract(some);
            }
        }
        String what = new Held(
                        taken.part(), taken.finish(), taken.lot(), String.join(" ", taken.serials()), taken.bin())
                .toString();
        return left.signum() > 0
                ? Outcome.faulty(StoresDesk.tooLittle(what, quantity, quantity.subtract(left)))
                : Outcome.sound(drawn);
    }

    /** Says that the bin holds too little: all that is left of the line is missing. */
    public Outcome<Written<Line>> missing(KitInWork kit, String part, String finish, String reason) {
        Taken asked = new Taken(part, finish, BigDecimal.ZERO, "", List.of(), "", "", "");
        return book.write(by, writing -> owed(writing, kit).then(owed -> line(writing, kit, asked)).then(line -> {
            writing.add(new ShopHappening.Short(line.order(), part, finish, line.left()), reason);
            return Outcome.sound(find(writing, kit, line.key()));
        }));
    }

    /** Gives something back that the order has got. */
    public Outcome<Written<Line>> back(KitInWork kit, Held held, BigDecimal quantity, String reason) {
        return book.write(by, writing -> {
            List<Issued> got = writing.stock().issuedTo(kit.order().name()).stream()
                    .filter(issued -> issued.held().in("").equals(held.in("")))
                    .toList();
            BigDecimal all = got.stream().map(Issued::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
            if (all.compareTo(quantity) < 0 || reason.isBlank()) {
                return Outcome.faulty(Fault.of(
                        "order " + kit.order().name(),
                        Digits.plain(quantity) + " of " + held.in("") + " back, of which it has got " + Digits.plain(all)
                                + (reason.isBlank() ? ", without a reason" : ""),
                        "no more than that, and a reason",
                        "Add --reason."));
            }
            String bin = held.bin().isEmpty() ? got.get(0).held().bin() : held.bin();
            String instead = got.get(0).instead();
            String wanted = instead.isEmpty() ? held.part() : instead;
            takeOut(writing, kit.order().name(), held, reason);
            writing.add(
                    new Worked(
                            kit.order().name(),
                            wanted,
                            revision(kit, wanted),
                            held.finish(),
                            PICKED,
                            quantity.negate()),
                    "");
            writing.add(
                    new StockHappening.Returned(held.in(bin), quantity, kit.order().name(), instead), reason);
            return Outcome.sound(find(
                    writing, kit, Stock.key(instead.isEmpty() ? held.part() : instead, held.finish())));
        });
    }

    /** The piece is in the kit no more; of a lot only where all of it comes back does the kit not hold it any longer. */
    private static void takeOut(Writing writing, String order, Held held, String reason) {
        writing.asBuilt().parts(order).stream()
                .filter(part -> part.out() == 0 && part.part().equals(held.part()))
                .filter(part -> !held.serial().isEmpty() && part.serial().equals(held.serial()))
                .forEach(part -> writing.add(new TakenOut(order, part.entry()), reason));
    }

    /** Calls an order's picking complete: not while a part is open that safety hangs on, and with a reason while any is. */
    public Outcome<Written<List<Line>>> complete(KitInWork kit, String reason) {
        return book.write(by, writing -> owed(writing, kit).then(owed -> {
            List<Line> open = lines(writing, kit).stream()
                    .filter(line -> line.left().signum() > 0)
                    .toList();
            List<Fault> faults = new ArrayList<>();
            open(open.stream().filter(Line::safety).toList(), true).forEach(faults::add);
            if (reason.isBlank()) {
                open(open.stream().filter(line -> !line.safety()).toList(), false).forEach(faults::add);
            }
            if (!faults.isEmpty()) {
                return Outcome.faulty(faults);
            }
            writing.add(
                    new ShopHappening.Picked(
                            kit.order().name(), open.stream().map(Line::key).toList()),
                    reason);
            return Outcome.sound(open);
        }));
    }

    private static Stream<Fault> open(List<Line> lines, boolean safety) {
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
