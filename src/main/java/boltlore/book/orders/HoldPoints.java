package boltlore.book.orders;

import boltlore.book.ChangeHappening.Decided;
import boltlore.book.ChangeState;
import boltlore.book.Entry;
import boltlore.book.Frozen;
import boltlore.book.Happening;
import boltlore.book.OrderChange;
import boltlore.book.OrderHappening;
import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.QuotedVersion;
import boltlore.book.Subject;
import boltlore.book.db.Reading;
import boltlore.book.db.Shop.KeptRecord;
import boltlore.book.db.Shop.Piece;
import boltlore.book.orders.HoldPoint.Matter;
import boltlore.faults.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where an order must not go on before somebody has looked: before it is frozen, tested, shipped or cancelled. All that holds
 * it is told together. What people are hurt by, and what cannot be found out afterwards, nobody passes.
 */
public final class HoldPoints {

    private final Reading reading;
    private final OrderStanding order;
    private final List<HoldPoint> points = new ArrayList<>();

    private HoldPoints(Reading reading, OrderStanding order) {
        this.reading = reading;
        this.order = order;
    }

    /** What holds an order on its way to a state that it may go to. */
    public static List<HoldPoint> before(Reading reading, OrderStanding order, OrderState to) {
        HoldPoints found = new HoldPoints(reading, order);
        if (to == OrderState.TESTED) {
            found.tested();
            found.picked();
        } else if (to == OrderState.SHIPPED) {
            found.picked();
            found.packed();
            found.tested();
            found.points.addAll(RecordHolds.of(reading, order));
        } else if (to == OrderState.CANCELLED) {
            found.cancelled();
        }
        return List.copyOf(found.points);
    }

    /** What holds an order before its kit is frozen as it was quoted. */
    public static List<HoldPoint> beforeConfirming(Reading reading, QuotedVersion quoted) {
        return quoted.stands().findings().isEmpty()
                ? List.of(HoldPoint.firm(
                        Matter.KIT,
                        "a quotation of an earlier Boltlore, which did not keep what the trades found",
                        "one that all trades have looked at",
                        "'boltlore order quote " + quoted.order() + "' makes one."))
                : stops(reading, quoted.stands());
    }

    /** What must be mended before work goes on with a kit. */
    static List<HoldPoint> stops(Reading reading, Frozen stands) {
        return KeptFinding.in(reading, stands.findings()).stream()
                .filter(KeptFinding::stops)
                .map(stop -> HoldPoint.firm(
                        Matter.KIT,
                        "a Stop of '" + stop.by() + "': " + stop.says(),
                        "a kit that nothing stops",
                        "Mend it in the order or the catalogue, take it down and quote it again."))
                .toList();
    }

    /** What holds an accepted change before it is called carried out: what the kit needs no more is still in it. */
    static List<HoldPoint> beforeCarriedOut(Reading reading, OrderStanding order, OrderChange change) {
        List<String> over = reading.needs().above(order.name());
        return over.isEmpty() || change.asker().equals(OrderChange.SERVICE)
                ? List.of()
                : List.of(HoldPoint.firm(
                                Matter.CHANGE,
                                "picked, and not asked for by the kit any more",
                                "all of it back in the stores",
                                "'boltlore change carry " + order.name() + " " + change.number() + "' brings it back.")
                        .ofAll(over));
    }

    private void picked() {
        List<String> open = reading.packing().picked(order.name()).orElse(null);
        if (open == null) {
            points.add(HoldPoint.firm(
                    Matter.PICKING,
                    "a kit whose picking nobody has called complete since it was last changed",
                    "one that is picked",
                    "'boltlore pick list " + order.name() + "' says what is left, 'boltlore pick complete "
                            + order.name() + "' calls it complete."));
        } else if (!open.isEmpty()) {
            points.add(HoldPoint.released(
                            Matter.PICKING,
                            open.size() + " parts still to come",
                            "a whole kit",
                            "'boltlore pick take " + order.name() + "' takes them as soon as they are there.")
                    .ofAll(open));
        }
    }

    private void packed() {
        if (reading.packing().packed(order.name()).isEmpty()) {
            points.add(HoldPoint.firm(
                    Matter.PACKING,
                    "a kit that nobody has packed since it was last changed",
                    "one that lies in its crates",
                    "'boltlore pick pack " + order.name() + " --crates N' says that it does."));
        }
        List<String> wrong = reading.packing().counts(order.name()).stream()
                .filter(count -> count.counted().compareTo(count.wanted()) != 0)
                .map(count -> count.counted().toPlainString() + " of "
                        + count.wanted().toPlainString() + " " + count.part() + " in " + count.bag())
                .toList();
        if (!wrong.isEmpty()) {
            points.add(HoldPoint.firm(
                            Matter.PACKING,
                            "bags that were counted and do not hold what they should",
                            "what the kit asks for in each",
                            "Put them right, and count again: 'boltlore pick count " + order.name() + "'.")
                    .ofAll(wrong));
        }
    }

    private void tested() {
        KeptRecord last = last(reading, order, "test");
        if (last == null) {
            points.add(HoldPoint.firm(
                    Matter.TEST,
                    "no record of its end-of-line test",
                    "one that is passed",
                    "'boltlore record test " + order.name() + " FILE' judges and keeps it."));
        } else if (!last.passed()) {
            points.add(HoldPoint.firm(
                    Matter.TEST,
                    "an end-of-line test that is not passed (entry " + last.entry() + ")",
                    "a later one that is",
                    "Mend what failed, test again: 'boltlore record test " + order.name() + " FILE'."));
        } else {
            newest().filter(entry -> entry > last.entry())
                    .ifPresent(entry -> points.add(HoldPoint.released(
                            Matter.TEST,
                            "a kit that was changed (entry " + entry + ") after it was tested (entry " + last.entry()
                                    + ")",
                            "a test of the kit as it is",
                            "Test again what the change touches.")));
        }
    }

    /** The entry with which the kit was changed last. */
    private Optional<Long> newest() {
        return reading.journal().of(new Subject(OrderHappening.WHAT, order.name())).stream()
                .filter(HoldPoints::changesTheKit)
                .map(Entry::number)
                .reduce((one, other) -> other);
    }

    private static boolean changesTheKit(Entry entry) {
        return entry.happening() instanceof Outcome.Sound<Happening> sound
                && sound.value() instanceof Decided decided
                && decided.state() == ChangeState.ACCEPTED;
    }

    /** The record of a kind that counts. */
    static @Nullable KeptRecord last(Reading reading, OrderStanding order, String of) {
        return reading.shop().records(order.name()).stream()
                .filter(record -> record.of().equals(of))
                .reduce((one, other) -> other)
                .orElse(null);
    }

    /** What the kit stands on now. */
    static Frozen standing(Reading reading, OrderStanding order) {
        return reading.changes().of(order.name()).stream()
                .filter(change -> change.stands().kit().equals(order.resolved())
                        && (change.state() == ChangeState.ACCEPTED || change.state() == ChangeState.CARRIED_OUT))
                .map(OrderChange::stands)
                .reduce((one, other) -> other)
                .orElseGet(() -> reading.orders().quotations(order.name()).stream()
                        .filter(quoted ->
                                quoted.version() == (order.confirmed() > 0 ? order.confirmed() : order.version()))
                        .map(QuotedVersion::stands)
                        .findFirst()
                        .orElse(new Frozen("", "", "", "", "", "", "")));
    }

    private void cancelled() {
        int picked = reading.stock().issuedTo(order.name()).size();
        if (picked > 0) {
            points.add(HoldPoint.firm(
                    Matter.PICKING,
                    picked + " lines that were picked for it",
                    "an order that holds nothing of the stores",
                    "'boltlore pick back " + order.name() + " --all --reason TEXT' brings all of it back."));
        }
        List<String> there = reading.shop().pieces(List.of(), order.name()).stream()
                .filter(piece -> !piece.state().done())
                .map(Piece::piece)
                .toList();
        if (!there.isEmpty()) {
            points.add(HoldPoint.firm(
                            Matter.COATING,
                            there.size() + " pieces in the coating shop",
                            "none of this order",
                            "'boltlore coating withdraw " + order.name() + "' takes those out that do not hang yet.")
                    .ofAll(there));
        }
    }
}
