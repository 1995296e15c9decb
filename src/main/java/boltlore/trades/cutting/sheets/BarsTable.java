package boltlore.trades.cutting.sheets;

import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.cutting.SawnBar;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which bars the saw takes, their heat numbers, and what becomes of their rests. */
final class BarsTable {

    private static final Column TOGETHER =
            Column.text("together", "Same heat as bar").atMost(12);

    private static final Column[] COLUMNS = {
        Column.whole("bar", "Bar"),
        Column.text("take", "Take").atMost(30),
        Column.decimal("length", "Length", 1).in("mm"),
        Column.text("known", "Heat number known").atMost(16),
        Column.blank("heat", "Heat number read on the bar"),
        TOGETHER,
        Column.whole("pieces", "Pieces"),
        Column.decimal("rest", "Rest", 1).in("mm"),
        Column.text("then", "Its rest").atMost(30),
        Column.tick("done", "Done")
    };

    private BarsTable() {}

    static TableBuilder of(String material, List<SawnBar> bars) {
        boolean tied = bars.stream().anyMatch(bar -> !bar.oneHeatWith().isEmpty());
        TableBuilder table = Table.named("bars-" + material);
        Stream.of(COLUMNS).filter(column -> tied || !column.equals(TOGETHER)).forEach(table::columns);
        bars.forEach(bar -> fill(table, bar, tied));
        return table;
    }

    private static void fill(TableBuilder table, SawnBar bar, boolean tied) {
        RowBuilder row = table.row()
                .put("bar", bar.number())
                .put("take", CutWords.source(bar))
                .put("length", bar.lengthMm())
                .put("known", bar.heat())
                .put("pieces", bar.pieces().size())
                .put("rest", bar.restMm())
                .put("then", CutWords.rest(bar));
        if (tied) {
            row.put("together", bar.oneHeatWith().stream().map(String::valueOf).collect(Collectors.joining(", ")));
        }
    }
}
