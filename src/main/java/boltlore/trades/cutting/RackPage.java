package boltlore.trades.cutting;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Material;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What comes off the rack of remnants, what goes onto it and what stays there. */
final class RackPage {

    /** @param bar that it becomes or comes from, null where it stays in the rack */
    private record Racked(Remnant remnant, @Nullable Integer bar) {

        static Racked taken(SawnBar bar) {
            return new Racked(Objects.requireNonNull(bar.remnant()), bar.number());
        }

        static Racked kept(SawnBar bar, MaterialCuts cuts) {
            return new Racked(cuts.kept(bar), bar.number());
        }
    }

    private RackPage() {}

    /** Empty where there are no remnants before or after. */
    static Optional<PageBuilder> compose(CutPlan plan, Catalogue catalogue, String footer) {
        List<Racked> taken = new ArrayList<>();
        List<Racked> kept = new ArrayList<>();
        List<Racked> unused = new ArrayList<>();
        for (MaterialCuts cuts : plan.materials()) {
            cuts.bars().stream()
                    .filter(bar -> !bar.isBought())
                    .map(Racked::taken)
                    .forEach(taken::add);
            cuts.bars().stream()
                    .filter(SawnBar::isKept)
                    .map(bar -> Racked.kept(bar, cuts))
                    .forEach(kept::add);
            cuts.unused().forEach(remnant -> unused.add(new Racked(remnant, null)));
        }
        plan.idle().forEach(remnant -> unused.add(new Racked(remnant, null)));
        PageBuilder page = Page.named("Rack").footer(footer).title("Remnants");
        add(page, catalogue, "Take from the rack", "taken", taken);
        add(page, catalogue, "Mark with name, material and heat number, and put into the rack", "kept", kept);
        add(page, catalogue, "Not used, stays in the rack", "unused", unused);
        boolean none = taken.isEmpty() && kept.isEmpty() && unused.isEmpty();
        return none ? Optional.empty() : Optional.of(page.signatures("Taken and put back by"));
    }

    private static void add(PageBuilder page, Catalogue catalogue, String heading, String name, List<Racked> rows) {
        if (!rows.isEmpty()) {
            page.heading(heading)
                    .add(TableSpec.<Racked>named(name)
                            .text("remnant", "Remnant", 24, row -> row.remnant().name())
                            .text("material", "Material", 40, row -> says(row.remnant(), catalogue))
                            .decimal(
                                    "length",
                                    "Length",
                                    "mm",
                                    1,
                                    row -> row.remnant().lengthMm())
                            .text(
                                    "heat",
                                    "Heat number",
                                    18,
                                    row -> row.remnant().heat())
                            .box(Column.blank("read", "Heat number, where not known"))
                            .whole("bar", "Bar", "", Racked::bar)
                            .box(Column.tick("done", "Done"))
                            .of(rows));
        }
    }

    private static String says(Remnant remnant, Catalogue catalogue) {
        Material material = catalogue.materials().get(remnant.material());
        return material == null ? remnant.material() : material.says();
    }
}
