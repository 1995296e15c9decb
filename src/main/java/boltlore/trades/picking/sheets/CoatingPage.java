package boltlore.trades.picking.sheets;

import boltlore.catalogue.Part;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.picking.CoatedRow;
import java.util.List;

/** What is fetched from coating, finish by finish. */
final class CoatingPage {

    private static final List<Column> REST = List.of(
            Column.text("stages", "For").atMost(22),
            Column.text("mind", "Mind").atMost(18),
            Column.blank("batch", "Batch"));

    private CoatingPage() {}

    static PageBuilder of(List<CoatedRow> fromCoating, Head head, FinishNames finishes, Amounts amounts) {
        return Page.named("From coating")
                .landscape()
                .footer(head.footer("from coating"))
                .title("From coating, " + head.order().name())
                .add(table(fromCoating, finishes, amounts))
                .signatures("Picked by", "Second count by");
    }

    private static TableBuilder table(List<CoatedRow> fromCoating, FinishNames finishes, Amounts amounts) {
        TableBuilder table = Table.named("from-coating")
                .columns(amounts.between(Identity.columns("Bin, once coated"), REST, Boxes.columns()));
        String finish = "";
        for (CoatedRow coated : fromCoating) {
            if (!coated.row().finish().equals(finish)) {
                finish = coated.row().finish();
                table.group(finish, finishes.says(finish) + ", from " + from(coated));
            }
            fill(table.row(), coated);
        }
        return table;
    }

    private static void fill(RowBuilder row, CoatedRow coated) {
        Part part = coated.row().part();
        Identity.put(row, part, part.bin())
                .put("stages", Amounts.byStage(coated.row()))
                .put("mind", CautionWords.beside(coated.row().cautions()));
        Amounts.put(row, coated.row().quantity(), part.unit());
    }

    private static String from(CoatedRow coated) {
        return coated.coatedAt().isEmpty() ? "our own oven" : coated.coatedAt();
    }
}
