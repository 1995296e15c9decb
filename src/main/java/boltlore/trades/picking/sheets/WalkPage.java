package boltlore.trades.picking.sheets;

import boltlore.catalogue.Part;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.picking.PickRow;
import boltlore.trades.picking.PickingList;
import java.util.List;

/** The walk through the stores. */
final class WalkPage {

    private static final List<Column> REST = List.of(
            Column.text("stages", "For").atMost(22),
            Column.text("mind", "Mind").atMost(18),
            Column.blank("number", "Serial or lot"));

    private static final String HOW_TO = "Pick the count and the spares: one spare for each 20, or part of 20, small"
            + " fixings of a bag. Write down what is short and go on; do not put another part in its place.";

    private WalkPage() {}

    static PageBuilder of(PickingList list, Head head, Amounts amounts) {
        PageBuilder page = Page.named("Walk")
                .landscape()
                .frozen(2)
                .footer(head.footer("walk"))
                .title("Picking list " + head.order().name())
                .add(head.particulars(list));
        head.cautions(page, list.cautions());
        return page.add(table(list, amounts)).note(HOW_TO).signatures("Picked by", "Second count by");
    }

    private static TableBuilder table(PickingList list, Amounts amounts) {
        TableBuilder table =
                Table.named("walk").columns(amounts.withSparesBetween(Identity.columns("Bin"), REST, Boxes.columns()));
        list.walk().forEach(row -> fill(table.row(), row));
        return table;
    }

    private static void fill(RowBuilder row, PickRow pick) {
        Part part = pick.part();
        Identity.put(row, part, part.bin())
                .put("stages", Amounts.byStage(pick))
                .put("mind", CautionWords.beside(pick.cautions()))
                .put("number", Boxes.number(pick));
        Amounts.put(row, pick.quantity(), part.unit());
        Amounts.putSpares(row, pick.spares());
    }
}
