package boltlore.trades.testing;

import java.util.List;
import java.util.stream.Stream;

/**
 * What the readings of one kit come to.
 *
 * @param strangers readings of boxes that this kit does not have
 */
public record Verdict(TestPlan plan, List<JudgedRow> rows, List<Reading> strangers) {

    public Verdict {
        rows = List.copyOf(rows);
        strangers = List.copyOf(strangers);
    }

    /** Every test passed, and nothing is filled in for a test that this kit does not call for. */
    public boolean passed() {
        return strangers.isEmpty() && open().findAny().isEmpty();
    }

    /** Tests that did not pass, in the order of the sheet. */
    public Stream<JudgedRow> open() {
        return rows.stream().filter(row -> !row.judgement().passed());
    }
}
