package boltlore.report.xlsx;

import boltlore.report.Block;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.Row;
import boltlore.report.Table;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Narrow tables with two rows side by side, or four: of each group, and of each long stretch of rows, the first part stands
 * at the left and the others beside it. Only columns of the paper are shown.
 *
 * @param onPaper columns of one row
 * @param abreast rows that stand side by side
 */
record Pairs(int onPaper, int abreast) {

    /** Rows that are read down before one goes on at the right, so that a sheet of paper seldom ends within. */
    private static final int HIGHEST = 25;

    /** The page with its tables as they stand on paper. */
    static Page of(Page page) {
        if (page.tables().noneMatch(table -> table.abreast() > 1)) {
            return page;
        }
        double room = Grid.sheet(page.print().landscape()) * Grid.WIDEST;
        List<Block> blocks = page.blocks().stream()
                .map(block -> block instanceof Table table ? fitting(table, room) : block)
                .toList();
        return page.of(blocks);
    }

    /** Long words of some language may leave no room for as many. */
    private static Table fitting(Table table, double room) {
        for (int abreast = table.abreast(); abreast > 1; abreast--) {
            Table beside = new Pairs(ColumnWidth.onPaper(table), abreast).laid(table);
            if (ColumnWidth.of(beside).stream().mapToDouble(ColumnWidth::least).sum() <= room) {
                return beside;
            }
        }
        return table;
    }

    private Table laid(Table table) {
        List<Column> one = table.columns().subList(0, onPaper);
        List<Column> columns = IntStream.rangeClosed(1, abreast)
                .boxed()
                .flatMap(place -> one.stream().map(column -> place == 1 ? column : again(column, place)))
                .toList();
        List<Row> rows = new ArrayList<>();
        List<Row> run = new ArrayList<>();
        for (Row row : table.rows()) {
            if (row.isPlain()) {
                run.add(row);
                continue;
            }
            lay(run, rows);
            rows.add(row(List.of(row), 0, 1));
        }
        lay(run, rows);
        return new Table(table.name(), table.about(), columns, rows);
    }

    private void lay(List<Row> run, List<Row> rows) {
        for (int from = 0; from < run.size(); from += abreast * HIGHEST) {
            List<Row> some = run.subList(from, Math.min(run.size(), from + abreast * HIGHEST));
            int high = (some.size() + abreast - 1) / abreast;
            for (int i = 0; i < high; i++) {
                rows.add(row(some, i, high));
            }
        }
        run.clear();
    }

    /** Row i of some, and each that is so many rows further, with nothing where there is none any more. */
    private Row row(List<Row> some, int i, int high) {
        List<Cell> cells = new ArrayList<>();
        for (int place = 0; place < abreast; place++) {
            int at = i + place * high;
            cells.addAll(at < some.size() ? cells(some.get(at)) : Collections.nCopies(onPaper, Cell.EMPTY));
        }
        Row row = some.get(i);
        return new Row(row.kind(), row.key(), row.group(), row.words(), cells, Map.of(), Map.of());
    }

    private List<Cell> cells(Row row) {
        return row.cells().subList(0, onPaper);
    }

    /** The column once more, further to the right. */
    private static Column again(Column column, int place) {
        return new Column(
                column.key() + "-" + place,
                column.heading(),
                column.unit(),
                column.kind(),
                column.widest(),
                column.onPaper());
    }
}
