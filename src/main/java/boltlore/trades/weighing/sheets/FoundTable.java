package boltlore.trades.weighing.sheets;

import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.weighing.Weighing;

/** What was found and what is missing, a row each. */
final class FoundTable {

    private static final Column[] COLUMNS = {
        Column.text("about", "About"), Column.text("says", "What was found").atMost(64)
    };

    private FoundTable() {}

    static TableBuilder of(Weighing weighing) {
        TableBuilder table = Table.named("found").columns(COLUMNS);
        WeighWords.of(weighing)
                .forEach(found -> table.row().put("about", found.about()).put("says", found.says()));
        return table;
    }
}
