package boltlore.trades.picking.sheets;

import boltlore.catalogue.Part;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.picking.ExtraRow;
import java.util.List;

/** What the order asks for beside the universal kit. */
final class ExtrasPage {

    private static final List<Column> REST = List.of(
            Column.text("supplier", "Supplied by"),
            Column.text("reason", "Why").atMost(40),
            Column.text("mind", "Mind").atMost(18));

    private static final String OUTSIDE =
            "The order asks for these beside the kit. That they fit, and fit together, is not proved.";

    private ExtrasPage() {}

    static PageBuilder of(List<ExtraRow> extras, Head head, Amounts amounts) {
        return Page.named("Outside the kit")
                .landscape()
                .footer(head.footer("outside the kit"))
                .title("Outside the universal kit, " + head.order().name())
                .note(OUTSIDE)
                .add(table(extras, amounts))
                .signatures("Picked by", "Second count by");
    }

    private static TableBuilder table(List<ExtraRow> extras, Amounts amounts) {
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
