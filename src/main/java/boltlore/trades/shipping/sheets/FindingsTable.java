package boltlore.trades.shipping.sheets;

import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.shipping.ShipFinding;
import java.util.List;

/** What a person must look at before the crates leave, what stops first. */
final class FindingsTable {

    private static final Column[] COLUMNS = {
        Column.text("about", "About").atMost(18),
        Column.text("says", "What to look at").atMost(72),
        Column.text("stops", "Means").atMost(10),
        Column.tick("seen", "Seen")
    };

    private FindingsTable() {}

    static TableBuilder of(List<ShipFinding> findings) {
        TableBuilder table = Table.named("findings").columns(COLUMNS);
        findings.forEach(finding -> table.row()
                .put("about", finding.about())
                .put("says", finding.says())
                .put("stops", finding.stops() ? "stops" : "look at it"));
        return table;
    }
}
