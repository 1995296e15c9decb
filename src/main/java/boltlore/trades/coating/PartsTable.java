package boltlore.trades.coating;

import boltlore.catalogue.Feature;
import boltlore.report.Column;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The pieces of a batch, one row for each part, with boxes for what is counted by hand. */
final class PartsTable {

    private PartsTable() {}

    /**
     * Rows and their totals; no column for masks or remarks where there are none.
     *
     * @param byHand columns at the right end that stay empty for the pen
     */
    static TableBuilder compose(List<BatchRow> rows, Column... byHand) {
        int masks = masks(rows);
        TableBuilder table = spec(
                        masks > 0,
                        rows.stream().anyMatch(row -> !CoatWords.remark(row).isEmpty()),
                        byHand)
                .of(rows);
        int pieces = rows.stream().mapToInt(BatchRow::pieces).sum();
        BigDecimal areaM2 = rows.stream().map(BatchRow::areaM2).reduce(BigDecimal.ZERO, BigDecimal::add);
        var total = table.total("total", "Total")
                .sum("pieces", BigDecimal.valueOf(pieces))
                .sum("area", areaM2);
        if (masks > 0) {
            total.sum("masks", BigDecimal.valueOf(masks));
        }
        return table;
    }

    private static TableSpec<BatchRow> spec(boolean masked, boolean remarked, Column... byHand) {
        TableSpec<BatchRow> table = TableSpec.<BatchRow>named("pieces")
                .text("part", "Part", row -> row.part().number().text())
                .said("name", "Name", 26, row -> row.part().name());
        CoatWords.marked(table, 18, row -> row);
        if (masked) {
            table.text("mask", "Mask on each piece", 20, row -> CoatWords.spots(row, CoatWords::masked));
        }
        if (remarked) {
            table.text("remark", "Remark", 22, CoatWords::remark);
        }
        CoatWords.counted(table, row -> row);
        if (masked) {
            table.whole("masks", "Masks", "", PartsTable::orNone);
        }
        table.decimal("area", "Area", "m²", 3, BatchRow::areaM2);
        List.of(byHand).forEach(table::box);
        CoatWords.measured(
                table.besideThePaper(),
                "envelope",
                "Envelope",
                "mm",
                18,
                row -> CoatWords.envelope(row.coat().envelope()));
        return table.decimal("thin", "Section thin", "mm", 1, row -> row.coat().thinnestMm())
                .decimal("thick", "Section thick", "mm", 1, row -> row.coat().thickestMm())
                .decimal("area-each", "Area each", "m²", 3, BatchRow::areaEachM2)
                .whole("hang", "Hang points each", "", row -> row.coat().hangPoints())
                .text("revision", "Rev", row -> row.part().revision());
    }

    private static @Nullable Integer orNone(BatchRow row) {
        int masks = masks(row);
        return masks == 0 ? null : masks;
    }

    static int masks(List<BatchRow> rows) {
        return rows.stream().mapToInt(PartsTable::masks).sum();
    }

    private static int masks(BatchRow row) {
        int onEach = row.coat().features().stream()
                .filter(CoatWords::masked)
                .mapToInt(Feature::count)
                .sum();
        return onEach * row.pieces();
    }
}
