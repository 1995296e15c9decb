package boltlore.trades.picking.sheets;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Shipping;
import boltlore.catalogue.Workshop;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.picking.BagPage;
import boltlore.trades.picking.BagRow;
import java.util.List;

/** The second count of one fit stage, bag by bag. */
final class BagsPage {

    private static final String LOOSE = "Loose, in no bag";

    private static final List<Column> WHAT = List.of(
            Column.text("part", "Part"), Column.text("finish", "Finish").atMost(16), Column.text("name", "Name"));

    private static final List<Column> REST = List.of(Column.text("mind", "Mind").atMost(12));

    private static final List<Column> BOXES =
            List.of(Column.blank("counted", "Counted"), Column.blank("short", "Short"));

    private final Workshop workshop;
    private final Shipping shipping;
    private final Head head;
    private final FinishNames finishes;
    private final Amounts amounts;

    BagsPage(Catalogue catalogue, Head head, FinishNames finishes, Amounts amounts) {
        this.workshop = catalogue.workshop();
        this.shipping = catalogue.shipping();
        this.head = head;
        this.finishes = finishes;
        this.amounts = amounts;
    }

    PageBuilder of(BagPage bags) {
        return Page.named("Bags " + bags.stage())
                .footer(head.footer("second count, " + workshop.stageSays(bags.stage(), "en")))
                .title(workshop.stageSays(bags.stage(), "en") + ": second count, "
                        + head.order().name())
                .add(table(bags))
                .signatures("Second count by", "Bags closed by");
    }

    private TableBuilder table(BagPage bags) {
        TableBuilder table = Table.named("bags").columns(amounts.withSparesBetween(WHAT, REST, BOXES));
        String bag = null;
        for (BagRow packed : bags.rows()) {
            if (!packed.bag().equals(bag)) {
                bag = packed.bag();
                table.group(bag.isEmpty() ? "loose" : bag, bag.isEmpty() ? LOOSE : labelled(bag));
            }
            fill(table.row(), packed);
        }
        return table;
    }

    /** The code, and what the customer's papers call the bag: that is written on it. */
    private String labelled(String bag) {
        String says = shipping.bagSays(bag, workshop, head.order().language());
        return says.equals(bag) ? bag : says + " (" + bag + ")";
    }

    private void fill(RowBuilder row, BagRow packed) {
        row.put("part", packed.part().number().text())
                .put("finish", finishes.says(packed.finish()))
                .put("name", packed.part().name().english())
                .put("mind", CautionWords.beside(packed.cautions()));
        Amounts.put(row, packed.quantity(), packed.part().unit());
        Amounts.putSpares(row, packed.spares());
    }
}
