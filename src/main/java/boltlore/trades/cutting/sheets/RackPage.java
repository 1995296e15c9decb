package boltlore.trades.cutting.sheets;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.cutting.CutPlan;
import boltlore.trades.cutting.MaterialCuts;
import boltlore.trades.cutting.Remnant;
import boltlore.trades.cutting.SawnBar;
import java.util.Objects;

/** What comes off the rack of remnants, and what goes onto it. */
final class RackPage {

    private static final Column[] COLUMNS = {
        Column.text("remnant", "Remnant").atMost(24),
        Column.text("material", "Material").atMost(40),
        Column.decimal("length", "Length", 1).in("mm"),
        Column.text("heat", "Heat number").atMost(18),
        Column.blank("read", "Heat number, where not known"),
        Column.whole("bar", "Bar"),
        Column.tick("done", "Done")
    };

    private RackPage() {}

    static boolean speaksOf(CutPlan plan) {
        return plan.materials().stream()
                .flatMap(cuts -> cuts.bars().stream())
                .anyMatch(bar -> bar.isKept() || !bar.isBought());
    }

    static PageBuilder of(CutPlan plan, String footer) {
        TableBuilder taken = Table.named("taken").columns(COLUMNS);
        TableBuilder kept = Table.named("kept").columns(COLUMNS);
        for (MaterialCuts cuts : plan.materials()) {
            cuts.bars().stream().filter(bar -> !bar.isBought()).forEach(bar -> taken(taken, cuts, bar));
            cuts.bars().stream().filter(SawnBar::isKept).forEach(bar -> kept(kept, cuts, bar));
        }
        PageBuilder page = Page.named("Rack").landscape().footer(footer).title("Remnants");
        add(page, "Take from the rack", taken.build());
        add(page, "Mark with name, material and heat number, and put into the rack", kept.build());
        return page.signatures("Taken and put back by");
    }

    private static void add(PageBuilder page, String heading, Table table) {
        if (!table.rows().isEmpty()) {
            page.heading(heading).add(table);
        }
    }

    private static void taken(TableBuilder table, MaterialCuts cuts, SawnBar bar) {
        Remnant remnant = Objects.requireNonNull(bar.remnant());
        table.row()
                .put("remnant", remnant.name())
                .put("material", cuts.material().says())
                .put("length", remnant.lengthMm())
                .put("heat", remnant.heat())
                .put("bar", bar.number());
    }

    private static void kept(TableBuilder table, MaterialCuts cuts, SawnBar bar) {
        table.row()
                .put("remnant", bar.keptAs())
                .put("material", cuts.material().says())
                .put("length", bar.restMm())
                .put("heat", bar.heat())
                .put("bar", bar.number());
    }
}
