package boltlore.cli;

import boltlore.trades.testing.GroupPlan;
import boltlore.trades.testing.Limit;
import boltlore.trades.testing.TestPlan;
import boltlore.trades.testing.TestRow;
import boltlore.trades.testing.sheets.TestWords;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** A test plan for the terminal: groups with their limits. */
final class TestText {

    private static final TestWords WORDS = TestWords.in("en");

    private TestText() {}

    static void print(Screen screen, TestPlan plan) {
        screen.heading(plan.order() + ", "
                + plan.bill().order().choices().family().says().english() + ", catalogue revision " + plan.revision());
        plan.groups().forEach(group -> print(screen, group));
        long unknown =
                plan.rows().filter(row -> row.limit() instanceof Limit.Unknown).count();
        if (unknown > 0) {
            screen.wrapped(2, unknown + " limits are not known, so these tests cannot pass: see electrics.json.");
        }
    }

    private static void print(Screen screen, GroupPlan group) {
        int rows = group.rows().size();
        screen.line("  " + group.group().says().english() + ": " + rows + (rows == 1 ? " test" : " tests"));
        Map<String, Integer> counted = new LinkedHashMap<>();
        group.rows().forEach(row -> counted.merge(says(row), 1, Integer::sum));
        counted.forEach((says, count) -> screen.wrapped(4, count == 1 ? says : says + " (" + count + " places)"));
    }

    private static String says(TestRow row) {
        String basis = row.basis().isEmpty() ? "" : ", " + row.basis();
        return row.test().says().english() + ": " + WORDS.limit(row) + basis;
    }

    static String written(int orders, Path out) {
        return (orders == 1 ? "Test sheet" : orders + " test sheets") + " with empty records written to " + out;
    }
}
