package boltlore.trades.testing.sheets;

import boltlore.measure.Digits;
import boltlore.report.PageBuilder;
import boltlore.trades.testing.GroupPlan;
import boltlore.trades.testing.TestRow;
import java.math.BigDecimal;

/** How the isolation of this kit is measured and worked out: circuit, formula, a worked example. */
final class IsolationNotes {

    private static final int KILO = 3;

    private IsolationNotes() {}

    /** Nothing where no test of the group is worked out from voltages. */
    static void on(PageBuilder page, GroupPlan plan, TestWords words) {
        plan.rows().stream().filter(row -> row.suitedOhm() != null).findFirst().ifPresent(row -> on(page, row, words));
    }

    private static void on(PageBuilder page, TestRow row, TestWords words) {
        BigDecimal suited = row.suitedOhm() == null ? BigDecimal.ONE : row.suitedOhm();
        page.heading(words.say("isolation.heading"));
        page.picture(IsolationCircuit.of(words));
        page.note(words.say("isolation.formula", Digits.plain(suited.movePointLeft(KILO))));
        page.note(words.say("isolation.limit", words.limit(row), words.basis(row)));
        page.note(words.say("isolation.source"));
    }
}
