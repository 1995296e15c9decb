package boltlore.trades.costing.sheets;

import boltlore.catalogue.Line;
import boltlore.catalogue.Part;
import boltlore.measure.LineName;
import boltlore.order.LeftOut;
import boltlore.report.Column;
import boltlore.report.PageBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.resolution.Kit;
import java.util.SortedSet;

/** Brackets that carry nothing in this kit, and what becomes of them. */
final class UnusedBrackets {

    private final QuotedOrder quoted;
    private final TableBuilder table;

    private UnusedBrackets(QuotedOrder quoted) {
        this.quoted = quoted;
        this.table = Table.named("unused")
                .columns(
                        Column.text("bracket", quoted.phrases().say("bracket")).atMost(50),
                        Column.quantity("quantity", quoted.phrases().say("quantity")),
                        Column.text("decision", quoted.phrases().say("decision"))
                                .atMost(36));
    }

    static void on(PageBuilder page, QuotedOrder quoted) {
        Kit kit = quoted.bill().resolved().kit();
        if (kit.unused().isEmpty() && kit.leftOut().isEmpty()) {
            return;
        }
        boolean open = quoted.order().leftOut() instanceof LeftOut.Undecided;
        UnusedBrackets brackets = new UnusedBrackets(quoted);
        page.heading(quoted.phrases().say("unused"));
        brackets.add(page, kit.unused(), open ? "undecided" : "kept", open ? "decisionOpen" : "decisionKept");
        brackets.add(page, kit.leftOut(), "leftOut", "decisionLeft");
        page.add(brackets.table);
    }

    private void add(PageBuilder page, SortedSet<LineName> lines, String sentence, String decision) {
        if (!lines.isEmpty()) {
            page.note(quoted.phrases().say(sentence));
        }
        quoted.family().lines().filter(line -> lines.contains(line.name())).forEach(line -> row(line, decision));
    }

    private void row(Line line, String decision) {
        Part part = quoted.catalogue().part(line.part());
        table.row()
                .put("bracket", part.name().in(quoted.language()))
                .put("quantity", line.quantity())
                .put("decision", quoted.phrases().say(decision));
    }
}
