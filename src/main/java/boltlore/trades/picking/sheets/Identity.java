package boltlore.trades.picking.sheets;

import boltlore.catalogue.Part;
import boltlore.report.Column;
import boltlore.report.RowBuilder;
import java.util.List;

/** The columns by which a picker finds a part and knows it. */
final class Identity {

    private static final int WIDEST_NAME = 34;

    private Identity() {}

    static List<Column> columns(String binHeading) {
        return List.of(
                Column.text("bin", binHeading),
                Column.text("part", "Part"),
                Column.text("revision", "Rev."),
                Column.text("name", "Name").atMost(WIDEST_NAME));
    }

    static RowBuilder put(RowBuilder row, Part part, String bin) {
        return row.put("bin", bin.isEmpty() ? "no bin" : bin)
                .put("part", part.number().text())
                .put("revision", part.revision())
                .put("name", part.name().english());
    }
}
