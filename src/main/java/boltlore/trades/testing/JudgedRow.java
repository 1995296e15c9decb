package boltlore.trades.testing;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A test with its readings.
 *
 * @param readings all of them, in the order in which they count: of each box the last one decides
 * @param result what they come to, in the row's unit; null where it is no number or nobody can say
 */
public record JudgedRow(
        TestRow row, List<Reading> readings, @Nullable BigDecimal result, Judgement judgement) {

    public JudgedRow {
        readings = List.copyOf(readings);
    }

    /** Whether some box was filled in more than once. */
    public boolean retested() {
        return readings.stream().map(Reading::box).distinct().count() < readings.size();
    }
}
