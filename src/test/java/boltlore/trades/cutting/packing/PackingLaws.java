package boltlore.trades.cutting.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

@Label("Whatever is to be packed")
class PackingLaws {

    @Property(tries = 150)
    @Label("every piece is cut exactly once")
    void every_piece_once(@ForAll("tasks") Task task) {
        Packing packing = Packer.pack(task);
        for (int kind = 0; kind < task.kinds().size(); kind++) {
            int at = kind;
            assertThat(packing.bars().stream().mapToInt(bar -> bar.of(at)).sum())
                    .isEqualTo(task.kinds().get(kind).count());
        }
    }

    @Property(tries = 150)
    @Label("no bar is overfull, and none at hand is used more often than it is there")
    void no_bar_overfull(@ForAll("tasks") Task task) {
        Packing packing = Packer.pack(task);
        packing.bars()
                .forEach(bar -> assertThat(task.load(bar))
                        .isLessThanOrEqualTo(task.stocks().get(bar.stock()).room()));
        for (int stock = 0; stock < task.stocks().size(); stock++) {
            int at = stock;
            assertThat(packing.bars().stream().filter(bar -> bar.stock() == at).count())
                    .isLessThanOrEqualTo(task.stocks().get(stock).most());
        }
    }

    @Property(tries = 150)
    @Label("the cost is that of the bars and never under the bound")
    void never_under_the_bound(@ForAll("tasks") Task task) {
        Packing packing = Packer.pack(task);
        assertThat(packing.cost())
                .isEqualTo(CuttingPlan.of(task, packing.bars()).cost())
                .isGreaterThanOrEqualTo(packing.bound());
    }

    @Property(tries = 50)
    @Label("the same task gives the same packing")
    void the_same(@ForAll("tasks") Task task) {
        assertThat(Packer.pack(task)).isEqualTo(Packer.pack(task));
    }

    @Property(tries = 150)
    @Label("no bar is bought for what a bar at hand that nothing is on would hold")
    void at_hand_first(@ForAll("tasks") Task task) {
        Packing packing = Packer.pack(task);
        for (int stock = 0; stock < task.stocks().size(); stock++) {
            int at = stock;
            Stock atHand = task.stocks().get(stock);
            if (!atHand.isBought() && packing.bars().stream().noneMatch(bar -> bar.stock() == at)) {
                assertThat(packing.bars())
                        .filteredOn(bar -> task.stocks().get(bar.stock()).isBought())
                        .noneMatch(bar -> task.load(bar) <= atHand.room());
            }
        }
    }

    @Property(tries = 120)
    @Label("few pieces are packed at the least cost, as trying all ways shows, and it is known to be the least")
    void the_least(@ForAll("smallTasks") Task task) {
        Packing packing = Packer.pack(task);
        assertThat(packing.cost()).isEqualTo(AllWays.leastCost(task));
        assertThat(packing.proven()).isTrue();
    }

    @Property(tries = 100)
    @Label("the bounds hold by themselves")
    void the_bounds_hold(@ForAll("smallTasks") Task task) {
        long least = AllWays.leastCost(task);
        ColumnGeneration solved = ColumnGeneration.solved(
                task, task.counts(), new int[task.stocks().size()], new LinkedHashSet<>());
        assertThat(Bounds.byPrices(task, solved.prices())).isLessThanOrEqualTo(least);
        assertThat(Packer.quickBound(task)).isLessThanOrEqualTo(least);
    }

    @Provide
    Arbitrary<Task> tasks() {
        return tasks(40);
    }

    @Provide
    Arbitrary<Task> smallTasks() {
        return tasks(7);
    }

    private static Arbitrary<Task> tasks(int mostPieces) {
        return Combinators.combine(
                        kinds().list().ofMinSize(1).ofMaxSize(mostPieces),
                        Arbitraries.longs().between(1, 9),
                        Arbitraries.longs().between(200, 900).list().ofMaxSize(3))
                .as(PackingLaws::task);
    }

    private static Arbitrary<PieceType> kinds() {
        return Combinators.combine(
                        Arbitraries.longs().between(60, 700),
                        Arbitraries.integers().between(0, 5))
                .as((length, ends) -> new PieceType(length, ends(ends), 1));
    }

    private static Ends ends(int which) {
        return switch (which) {
            case 1 -> new Ends(0, 1, 0);
            case 2 -> new Ends(0, 0, 1);
            case 3 -> new Ends(1, 0, 1);
            default -> Ends.SQUARE;
        };
    }

    private static Task task(List<PieceType> kinds, long cost, List<Long> atHand) {
        List<Stock> stocks = new ArrayList<>(List.of(Stock.toBuy(1000, 10), Stock.toBuy(800, cost)));
        atHand.forEach(room -> stocks.add(Stock.atHand(room)));
        List<PieceType> sorted = kinds.stream()
                .sorted(Comparator.comparingLong(PieceType::length).reversed())
                .toList();
        return new Task(sorted, stocks, List.of(20L, 7L), 3, 100);
    }
}
