package boltlore.trades.testing;

import boltlore.catalogue.TestGroup;
import java.util.List;

/** The tests of one group that a kit calls for. */
public record GroupPlan(TestGroup group, List<TestRow> rows) {

    public GroupPlan {
        rows = List.copyOf(rows);
    }
}
