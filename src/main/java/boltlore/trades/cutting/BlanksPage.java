package boltlore.trades.cutting;

import boltlore.catalogue.Bending;
import boltlore.catalogue.Workshop;
import boltlore.measure.Digits;
import boltlore.report.CautionNotes;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;

/** Sheet-metal blanks: how large they are cut before they are bent. */
final class BlanksPage {

    private static final String FORMULA =
            "Length before bending: the legs, measured outside, and for each bend its allowance, π/180 × angle × (inside radius"
                    + " + K × thickness), in the place of two set-backs, (inside radius + thickness) × tan(angle/2). Radius and"
                    + " K are those of our own tools: bend a first-off, measure it, and say so where it differs.";

    private static final TableSpec<BlankRow> BLANKS = TableSpec.<BlankRow>named("blanks")
            .text("part", "Part", 14, row -> row.part().number().text())
            .text("revision", "Rev", row -> row.part().revision())
            .text("name", "Name", 30, row -> row.part().name().english())
            .text("sheet", "Sheet", 28, row -> row.material().says())
            .whole("count", "Blanks", "", BlankRow::count)
            .decimal("length", "Length", "mm", 1, BlankRow::developedMm)
            .decimal("width", "Width", "mm", 1, row -> row.blank().widthMm())
            .column(
                    Column.text("legs", "Legs outside").in("mm").atMost(20),
                    row -> joined(row.blank().legsMm()))
            .column(
                    Column.text("bends", "Bends").in("°").atMost(12),
                    row -> joined(row.blank().bendsDegrees()))
            .decimal("radius", "Inside radius", "mm", 1, BlanksPage::radius)
            .decimal("allowance", "All allowances", "mm", 2, BlanksPage::allowances)
            .decimal("mass", "Blank", "kg", 3, BlankRow::eachKg)
            .text("orders", "Order and parts", 22, row -> String.join(", ", row.orders()))
            .box(Column.tick("cut", "Cut"))
            .box(Column.blank("first", "First-off"));

    private BlanksPage() {}

    static PageBuilder compose(List<BlankRow> rows, Workshop workshop, String footer) {
        PageBuilder page = Page.named("Blanks").landscape().footer(footer).frozen(1);
        page.title("Sheet-metal blanks").note(FORMULA);
        CautionNotes.always(page, "cutting-press", workshop, "en");
        return page.add(BLANKS.of(rows)).signatures("Cut by", "First-offs measured by");
    }

    private static Cell joined(List<BigDecimal> numbers) {
        return Cell.of(numbers.stream().map(Digits::plain).collect(Collectors.joining(" + ")));
    }

    private static BigDecimal radius(BlankRow row) {
        Bending bending = row.material().bending();
        return bending == null ? BigDecimal.ZERO : bending.insideRadiusMm();
    }

    private static BigDecimal allowances(BlankRow row) {
        Bending bending = row.material().bending();
        return row.blank().bendsDegrees().stream()
                .map(degrees -> bending == null ? BigDecimal.ZERO : bending.allowanceMm(degrees, row.thicknessMm()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
