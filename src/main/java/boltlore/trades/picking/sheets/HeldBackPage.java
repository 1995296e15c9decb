package boltlore.trades.picking.sheets;

import boltlore.measure.LineName;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.picking.HeldBack;
import java.util.List;
import java.util.stream.Collectors;

/** What waits for a decision; it has no box to tick, so that nobody picks it. */
final class HeldBackPage {

    private static final List<Column> REST = List.of(
            Column.text("finish", "Finish"),
            Column.text("brackets", "Belongs to bracket line").atMost(44));

    private static final String UNDECIDED = "These brackets carry nothing in this kit, and nobody has said yet whether"
            + " they ship. The quantities come on top of those on the other pages.";

    private HeldBackPage() {}

    static PageBuilder of(List<HeldBack> heldBack, Head head, FinishNames finishes, Amounts amounts) {
        return Page.named("Held back")
                .landscape()
                .footer(head.footer("held back"))
                .title("Held back, " + head.order().name())
                .caution("Do not pick until decided", UNDECIDED)
                .add(table(heldBack, finishes, amounts))
                .signatures("Decided by");
    }

    private static TableBuilder table(List<HeldBack> heldBack, FinishNames finishes, Amounts amounts) {
        TableBuilder table =
                Table.named("held-back").columns(amounts.between(Identity.columns("Bin"), REST, List.of()));
        heldBack.forEach(held -> fill(table.row(), held, finishes));
        return table;
    }

    private static void fill(RowBuilder row, HeldBack held, FinishNames finishes) {
        Identity.put(row, held.part(), held.part().bin())
                .put("finish", finishes.says(held.finish()))
                .put("brackets", held.brackets().stream().map(LineName::text).collect(Collectors.joining(", ")));
        Amounts.put(row, held.quantity(), held.part().unit());
    }
}
