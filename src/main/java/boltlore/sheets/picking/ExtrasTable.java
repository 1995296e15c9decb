package boltlore.sheets.picking;

import boltlore.catalogue.Part;
import boltlore.picking.ExtraRow;
import boltlore.sheets.Column;
import boltlore.sheets.RowBuilder;
import boltlore.sheets.Table;
import boltlore.sheets.TableBuilder;
import java.util.List;

/** What the order asks for beside the universal kit. */
final class ExtrasTable {

    private static final List<Column> REST = List.of(
            Column.text("supplier", "Supplied by"),
            Column.text("reason", "Why").atMost(40),
            Column.text("mind", "Mind").atMost(18));

    private ExtrasTable() {}

    static TableBuilder of(List<ExtraRow> extras, Amounts amounts) {
        TableBuilder table =
                Table.named("outside-the-kit").columns(amounts.between(Identity.columns("Bin"), REST, Boxes.columns()));
        extras.forEach(extra -> fill(table.row(), extra));
        return table;
    }

    private static void fill(RowBuilder row, ExtraRow extra) {
        Part part = extra.part();
        if (part == null) {
            row.put("name", extra.extra().says());
        } else {
            Identity.put(row, part, extra.extra().suppliedByCustomer() ? "customer" : extra.bin());
        }
        row.put("supplier", extra.extra().suppliedByCustomer() ? "customer" : "us")
                .put("reason", extra.extra().reason())
                .put("mind", CautionWords.beside(extra.cautions()));
        Amounts.put(row, extra.extra().quantity(), extra.extra().unit());
    }
}
