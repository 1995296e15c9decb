package boltlore.trades.charging.sheets;

import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.charging.Charging;

/** What was compared with its limits outside the cables, worst first, and what could not be worked out. */
final class FoundTable {

    private static final Column[] COLUMNS = {
        Column.text("about", "About").atMost(16),
        Column.text("verdict", "Verdict").atMost(12),
        Column.text("says", "What was found").atMost(64)
    };

    private FoundTable() {}

    static TableBuilder of(Charging charging) {
        TableBuilder table = Table.named("found").columns(COLUMNS);
        ChargeWords.of(charging)
                .forEach(found -> table.row()
                        .put("about", found.about())
                        .put("verdict", found.verdict())
                        .put("says", found.says()));
        return table;
    }
}
