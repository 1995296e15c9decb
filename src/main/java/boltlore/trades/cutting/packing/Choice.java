package boltlore.trades.cutting.packing;

import java.util.Comparator;
import java.util.List;

/** Bars that hold all that is wanted, with what tells a better choice from a worse: cost, then scrap, then bars. */
record Choice(List<Filled> bars, long cost, long scrap) {

    private static final Comparator<Choice> BETTER = Comparator.comparingLong(Choice::cost)
            .thenComparingLong(Choice::scrap)
            .thenComparingInt(choice -> choice.bars().size());

    static Choice of(Task task, List<Filled> bars) {
        return new Choice(
                List.copyOf(bars),
                bars.stream()
                        .mapToLong(bar -> task.stocks().get(bar.stock()).cost())
                        .sum(),
                bars.stream().mapToLong(task::scrap).sum());
    }

    Choice orBetter(Choice other) {
        return BETTER.compare(other, this) < 0 ? other : this;
    }
}
