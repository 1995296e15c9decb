package boltlore.report.xlsx;

import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Look;
import boltlore.report.Row;
import boltlore.report.Table;
import boltlore.report.xlsx.LaidPage.LaidCell;
import boltlore.report.xlsx.LaidPage.LaidCode;
import boltlore.report.xlsx.LaidPage.LaidRow;
import boltlore.report.xlsx.LaidPage.Spot;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Lays a table's rows into the grid. */
final class TableLayout {

    private final Table table;
    private final Grid.Spans spans;
    private final double[] widths;
    /** Width for text, in characters. */
    private final double[] room;

    private final double least;
    private final int onPaper;
    private final Map<Look, List<CellStyleKey>> byLook = new EnumMap<>(Look.class);

    TableLayout(Grid grid, Table table, Grid.Spans spans) {
        this.table = table;
        this.spans = spans;
        this.widths = IntStream.range(0, table.columns().size())
                .mapToDouble(i -> grid.width(spans.start(i), spans.start(i + 1)))
                .toArray();
        List<CellStyleKey> headings = styles(Look.COLUMN_HEADING);
        this.room = IntStream.range(0, widths.length)
                .mapToDouble(i -> widths[i] - (headings.get(i).indented() ? ColumnWidth.INDENT : 0))
                .toArray();
        this.onPaper = ColumnWidth.onPaper(table);
        this.least = table.columns().stream()
                .mapToDouble(column -> high(column.kind().form()))
                .max()
                .orElse(0);
    }

    private static double high(Kind.Form form) {
        if (form == Kind.Form.CODE) {
            return LookStyle.CODE;
        }
        return form == Kind.Form.TICK ? LookStyle.TICK : form.isByHand() ? LookStyle.BY_HAND : LookStyle.lineHeight();
    }

    LaidRow heading() {
        List<LaidCell> cells = new ArrayList<>();
        List<CellStyleKey> styles = styles(Look.COLUMN_HEADING);
        double height = LookStyle.lineHeight();
        for (int i = 0; i < table.columns().size(); i++) {
            String text = table.columns().get(i).headingWithUnit();
            cells.add(new LaidCell(spans.start(i), spans.span(i), styles.get(i), Cell.of(text)));
            if (i < onPaper) {
                height = Math.max(height, LookStyle.height(Look.COLUMN_HEADING, text, room[i]));
            }
        }
        return new LaidRow(height, table.id(), cells);
    }

    LaidRow row(Row row) {
        List<LaidCell> cells = new ArrayList<>(table.columns().size());
        Look look = row.kind().look();
        double height = row.isPlain() ? least : LookStyle.lineHeight();
        int from = 0;
        if (!row.isPlain()) {
            from = Math.min(row.wordsCover(), onPaper);
            cells.add(new LaidCell(0, spans.start(from), CellStyleKey.of(look), Cell.of(row.words())));
            double width = IntStream.range(0, from).mapToDouble(i -> widths[i]).sum();
            height = Math.max(height, LookStyle.height(look, row.words(), width));
        }
        List<CellStyleKey> styles = styles(look);
        for (int i = from; i < table.columns().size(); i++) {
            Cell cell = isCode(i) ? Cell.EMPTY : row.cells().get(i);
            cells.add(new LaidCell(spans.start(i), spans.span(i), styles.get(i), cell));
            if (i < onPaper && cell instanceof Cell.Words words && mayWrap(words.text(), i)) {
                height = Math.max(height, LookStyle.height(look, words.text(), room[i]));
            }
        }
        return new LaidRow(height, table.id(), cells);
    }

    /** The texts of a row that machines read, which stand over their cells as pictures. */
    void codes(Row row, int at, List<LaidCode> codes) {
        for (int i = 0; i < onPaper; i++) {
            if (isCode(i) && row.cells().get(i) instanceof Cell.Words words) {
                codes.add(new LaidCode(words.text(), new Spot(spans.start(i), at)));
            }
        }
    }

    private boolean isCode(int column) {
        return table.columns().get(column).kind().form() == Kind.Form.CODE;
    }

    /** One for each column, the same object for all rows of a look. */
    private List<CellStyleKey> styles(Look look) {
        return byLook.computeIfAbsent(look, each -> {
            List<CellStyleKey> ofColumns = new ArrayList<>();
            for (Column column : table.columns()) {
                CellStyleKey style = CellStyleKey.inColumn(each, column.kind());
                ofColumns.add(ColumnWidth.followsFigures(table, ofColumns.size()) ? style.indent() : style);
            }
            return ofColumns;
        });
    }

    private boolean mayWrap(String text, int column) {
        return text.length() + 3 >= room[column] || text.indexOf('\n') >= 0;
    }
}
