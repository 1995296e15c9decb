package boltlore.trades.coating;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Oven;
import boltlore.catalogue.Workshop;
import boltlore.order.Order;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One more order in a plan that is already out on the shop floor: nothing that is planned to hang is hung elsewhere; the
 * late pieces go into loads that have room, and further loads and runs come where they cost the least change-over.
 */
final class LateOrder {

    private final Workshop workshop;
    private final CoatPlan planned;
    private final Order order;
    private final List<BatchRow> rows;
    private final Numbers numbers;
    private BoothWays booths;

    private LateOrder(CoatPlan planned, Bill late, Catalogue catalogue) {
        this.workshop = catalogue.workshop();
        this.planned = planned;
        this.order = late.order();
        this.rows = new RowCollector(catalogue).rows(List.of(late));
        this.numbers = new Numbers(planned);
        this.booths = BoothWays.of(workshop);
    }

    static CoatPlan in(CoatPlan planned, Bill late, Catalogue catalogue) {
        return new LateOrder(planned, late, catalogue).plan(CoatPlanner.cautions(List.of(late)));
    }

    private CoatPlan plan(SortedSet<String> lateCautions) {
        List<Round> rounds = rounds();
        SortedSet<String> cautions = new TreeSet<>(planned.cautions());
        cautions.addAll(lateCautions);
        List<Order> orders =
                rounds.stream().flatMap(round -> round.orders().stream()).toList();
        return new CoatPlan(orders, rounds, onHold(), cautions);
    }

    private List<Round> rounds() {
        List<Round> rounds = new ArrayList<>();
        int into = into();
        for (int i = 0; i < planned.rounds().size(); i++) {
            rounds.add(round(planned.rounds().get(i), i == into));
        }
        if (into == planned.rounds().size()) {
            rounds.add(round(new Round(into + 1, List.of(), List.of(), List.of(), List.of(), true), true));
        }
        return List.copyOf(rounds);
    }

    private List<BatchRow> onHold() {
        Stream<BatchRow> late = rows.stream().filter(row -> row.status() == CoatingStatus.HELD_BACK);
        return BatchRow.merged(Stream.concat(planned.onHold().stream(), late).toList());
    }

    /** The last round that begins no later than the order needs, or one of its own after all others. */
    private int into() {
        LocalDate need = needBy(order);
        int into = 0;
        for (int i = 1; i < planned.rounds().size(); i++) {
            LocalDate first = needBy(planned.rounds().get(i).orders().get(0));
            into = BatchRow.EARLIEST.compare(first, need) <= 0 ? i : into;
        }
        boolean beyondLast = into == planned.rounds().size() - 1
                && CoatPlanner.beyond(needBy(planned.rounds().get(into).orders().get(0)), need, workshop.coating());
        return beyondLast ? into + 1 : into;
    }

    private @Nullable LocalDate needBy(Order of) {
        return CoatPlanner.needBy(of, workshop.assemblyDays());
    }

    private Round round(Round base, boolean takesLate) {
        List<BatchRow> late = takesLate ? CoatPlanner.now(rows) : List.of();
        BatchMaker batches = new BatchMaker(workshop.coating(), numbers, base);
        batches.add(late);
        LateSprays sprays = new LateSprays(base, booths);
        List<Spray> inOrder = sprays.with(batches.own());
        List<PowderRun> runs = PowderRuns.group(inOrder, booths, (passes, oven) -> hung(base, passes, late, oven));
        booths = RoundPlanner.after(booths, runs);
        boolean shortest = base.shortest() && sprays.asBefore();
        List<PowderRun> numbered = numbers.given(runs);
        return new Round(base.number(), orders(base, takesLate), batches.own(), batches.out(), numbered, shortest);
    }

    private List<Order> orders(Round base, boolean takesLate) {
        return takesLate
                ? Stream.concat(base.orders().stream(), Stream.of(order)).toList()
                : base.orders();
    }

    private static List<OvenLoad> hung(Round base, List<Pass> passes, List<BatchRow> late, Oven oven) {
        List<OvenLoad> loads = base.runs().stream()
                .flatMap(run -> run.queues().stream())
                .filter(queue -> queue.passes().stream().anyMatch(pass -> holds(passes, pass)))
                .flatMap(queue -> queue.loads().stream())
                .toList();
        List<BatchRow> more = late.stream()
                .filter(row -> passes.stream().anyMatch(pass -> pass.takes(row)))
                .filter(row -> TooBig.of(row, oven).isEmpty())
                .toList();
        return OvenLoads.into(loads, more, oven);
    }

    private static boolean holds(List<Pass> passes, Pass wanted) {
        return passes.stream().anyMatch(wanted::same);
    }
}
