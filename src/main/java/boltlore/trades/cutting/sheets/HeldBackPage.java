package boltlore.trades.cutting.sheets;

import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.cutting.CutPlan.HeldBack;
import java.util.List;

/** What is not to be cut until someone has decided about it. */
final class HeldBackPage {

    private static final Column[] COLUMNS = {
        Column.text("order", "Order").atMost(20),
        Column.text("part", "Part").atMost(20),
        Column.text("revision", "Rev"),
        Column.text("name", "Name").atMost(40),
        Column.whole("count", "Parts"),
        new Column("decision", "Left out or kept", Kind.blank().oneOf("Left out", "Kept")),
        Column.signature("by", "Decided by")
    };

    private HeldBackPage() {}

    static PageBuilder of(List<HeldBack> heldBack, String footer) {
        TableBuilder table = Table.named("held-back").columns(COLUMNS);
        heldBack.forEach(held -> table.row()
                .put("order", held.order())
                .put("part", held.part().number().text())
                .put("revision", held.part().revision())
                .put("name", held.part().name().english())
                .put("count", held.count()));
        return Page.named("Held back")
                .landscape()
                .footer(footer)
                .title("Held back: do not cut")
                .note(
                        "These belong to brackets that carry nothing in their kit, and nobody has decided yet whether they are"
                                + " left out or kept. They are on no bar and among no blanks until this list is issued again.")
                .add(table);
    }
}
