package boltlore.trades.cutting.sheets;

import boltlore.catalogue.Bending;
import boltlore.measure.Digits;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.cutting.BlankRow;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/** Sheet-metal blanks: how large they are cut before they are bent. */
final class BlanksPage {

    private static final String FORMULA =
            "Length before bending: the legs, measured outside, and for each bend its allowance, π/180 × angle × (inside radius"
                    + " + K × thickness), in the place of two set-backs, (inside radius + thickness) × tan(angle/2). Radius and"
                    + " K are those of our own tools: bend a first-off, measure it, and say so where it differs.";

    private static final Column[] COLUMNS = {
        Column.text("part", "Part").atMost(14),
        Column.text("revision", "Rev"),
        Column.text("name", "Name").atMost(30),
        Column.text("sheet", "Sheet").atMost(28),
        Column.whole("count", "Blanks"),
        Column.decimal("length", "Length", 1).in("mm"),
        Column.decimal("width", "Width", 1).in("mm"),
        Column.text("legs", "Legs outside").in("mm").atMost(20),
        Column.text("bends", "Bends").in("°").atMost(12),
        Column.decimal("radius", "Inside radius", 1).in("mm"),
        Column.decimal("allowance", "All allowances", 2).in("mm"),
        Column.decimal("mass", "Blank", 3).in("kg"),
        Column.text("orders", "Order and parts").atMost(22),
        Column.tick("cut", "Cut"),
        Column.blank("first", "First-off")
    };

    private BlanksPage() {}

    static PageBuilder of(List<BlankRow> rows, String footer) {
        TableBuilder table = Table.named("blanks").columns(COLUMNS);
        rows.forEach(row -> fill(table, row));
        PageBuilder page = Page.named("Blanks").landscape().footer(footer).frozen(1);
        page.title("Sheet-metal blanks").note(FORMULA);
        CutCautions.atThePress(page);
        return page.add(table).signatures("Cut by", "First-offs measured by");
    }

    private static void fill(TableBuilder table, BlankRow row) {
        table.row()
                .put("part", row.part().number().text())
                .put("revision", row.part().revision())
                .put("name", row.part().name().english())
                .put("sheet", row.material().says())
                .put("count", row.count())
                .put("length", row.developedMm().setScale(1, RoundingMode.HALF_UP))
                .put("width", row.blank().widthMm())
                .put("legs", joined(row.blank().legsMm()))
                .put("bends", joined(row.blank().bendsDegrees()))
                .put("radius", radius(row))
                .put("allowance", allowances(row))
                .put("mass", row.eachKg().setScale(3, RoundingMode.HALF_UP))
                .put("orders", String.join(", ", row.orders()));
    }

    private static String joined(List<BigDecimal> numbers) {
        return numbers.stream().map(Digits::plain).collect(Collectors.joining(" + "));
    }

    private static BigDecimal radius(BlankRow row) {
        Bending bending = row.material().bending();
        return bending == null ? BigDecimal.ZERO : bending.insideRadiusMm();
    }

    private static BigDecimal allowances(BlankRow row) {
        Bending bending = row.material().bending();
        return row.blank().bendsDegrees().stream()
                .map(degrees -> bending == null ? BigDecimal.ZERO : bending.allowanceMm(degrees, row.thicknessMm()))
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .setScale(2, RoundingMode.HALF_UP);
    }
}
