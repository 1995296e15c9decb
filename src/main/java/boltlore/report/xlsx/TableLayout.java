package boltlore.report.xlsx;

import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Look;
import boltlore.report.Row;
import boltlore.report.Table;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Lays a table's rows into the grid. */
final class TableLayout {

    private final Grid grid;
    private final Table table;
    private final Spans spans;
    private final double[] widths;
    private final boolean byHand;
    private final Map<Look, List<Face>> faces = new EnumMap<>(Look.class);

    TableLayout(Grid grid, Table table, Spans spans) {
        this.grid = grid;
        this.table = table;
        this.spans = spans;
        this.widths = IntStream.range(0, table.columns().size())
                .mapToDouble(i -> width(i, i + 1))
                .toArray();
        this.byHand =
                table.columns().stream().anyMatch(column -> column.kind().form().isByHand());
    }

    LaidRow heading() {
        List<LaidCell> cells = new ArrayList<>();
        double height = Heights.line();
        for (int i = 0; i < table.columns().size(); i++) {
            Column column = table.columns().get(i);
            String text = column.headingWithUnit();
            Face face = faces(Look.COLUMN_HEADING).get(i);
            cells.add(LaidCell.of(spans.start(i), spans.span(i), face, Cell.of(text)));
            height = Math.max(height, Heights.of(Look.COLUMN_HEADING, text, widths[i]));
        }
        return new LaidRow(height, cells);
    }

    LaidRow row(Row row) {
        List<LaidCell> cells = new ArrayList<>(table.columns().size());
        Look look = row.kind().look();
        double height = byHand && row.isPlain() ? Heights.BY_HAND : Heights.line();
        int from = 0;
        if (!row.isPlain()) {
            from = row.wordsCover();
            cells.add(LaidCell.of(0, spans.span(0, from), Face.of(look), Cell.of(row.words())));
            height = Math.max(height, Heights.of(look, row.words(), width(0, from)));
        }
        List<Face> ofColumns = faces(look);
        for (int i = from; i < table.columns().size(); i++) {
            Cell cell = row.cells().get(i);
            cells.add(LaidCell.of(spans.start(i), spans.span(i), ofColumns.get(i), cell));
            if (cell instanceof Cell.Words words && mayWrap(words.text(), i)) {
                height = Math.max(height, Heights.of(look, words.text(), widths[i]));
            }
        }
        return new LaidRow(height, cells);
    }

    /** One for each column, the same object for all rows of a look. */
    private List<Face> faces(Look look) {
        return faces.computeIfAbsent(look, each -> {
            List<Face> ofColumns = new ArrayList<>();
            for (int i = 0; i < table.columns().size(); i++) {
                Face face = Face.inColumn(each, table.columns().get(i).kind());
                ofColumns.add(Need.followsFigures(table, i) ? face.indented() : face);
            }
            return ofColumns;
        });
    }

    private boolean mayWrap(String text, int column) {
        return text.length() + 3 >= widths[column] || text.indexOf('\n') >= 0;
    }

    private double width(int from, int to) {
        return grid.width(spans.start(from), spans.start(to));
    }
}
