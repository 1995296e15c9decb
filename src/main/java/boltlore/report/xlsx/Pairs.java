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
import java.util.stream.Stream;

/**
 * Narrow tables with two rows side by side: of each group, and of each long stretch of rows, the first half stands at the
 * left and the second beside it. Only columns of the paper are shown.
 */
final class Pairs {

    /** Of the columns at the right. */
    private static final String SECOND = "-2";

    /** Rows that are read down before one goes on at the right, so that a sheet of paper seldom ends within. */
    private static final int HIGHEST = 25;

    private Pairs() {}

    /** The page with its tables as they stand on paper. */
    static Page of(Page page) {
        if (page.tables().noneMatch(Table::inPairs)) {
            return page;
        }
        double room = Grid.sheet(page.print().landscape()) * Grid.WIDEST;
        List<Block> blocks = page.blocks().stream()
                .map(block -> block instanceof Table table && table.inPairs() ? fitting(table, room) : block)
                .toList();
        return new Page(page.name(), page.language(), page.print(), blocks);
    }

    /** Long words of some language may leave no room for two. */
    private static Table fitting(Table table, double room) {
        Table paired = of(table);
        double least =
                ColumnWidth.of(paired).stream().mapToDouble(ColumnWidth::least).sum();
        return least <= room ? paired : table;
    }

    private static Table of(Table table) {
        int onPaper = ColumnWidth.onPaper(table);
        List<Column> left = table.columns().subList(0, onPaper);
        List<Column> columns =
                Stream.concat(left.stream(), left.stream().map(Pairs::second)).toList();
        List<Row> rows = new ArrayList<>();
        List<Row> run = new ArrayList<>();
        for (Row row : table.rows()) {
            if (row.isPlain()) {
                run.add(row);
                continue;
            }
            pair(run, onPaper, rows);
            rows.add(row(row, cells(row, onPaper), empty(onPaper)));
        }
        pair(run, onPaper, rows);
        return new Table(table.name(), table.about(), columns, rows);
    }

    private static void pair(List<Row> run, int onPaper, List<Row> rows) {
        for (int from = 0; from < run.size(); from += 2 * HIGHEST) {
            List<Row> some = run.subList(from, Math.min(run.size(), from + 2 * HIGHEST));
            int half = (some.size() + 1) / 2;
            for (int i = 0; i < half; i++) {
                List<Cell> right = i + half < some.size() ? cells(some.get(i + half), onPaper) : empty(onPaper);
                rows.add(row(some.get(i), cells(some.get(i), onPaper), right));
            }
        }
        run.clear();
    }

    private static Row row(Row row, List<Cell> left, List<Cell> right) {
        List<Cell> cells = Stream.concat(left.stream(), right.stream()).toList();
        return new Row(row.kind(), row.key(), row.group(), row.words(), cells, Map.of(), Map.of());
    }

    private static List<Cell> cells(Row row, int onPaper) {
        return row.cells().subList(0, onPaper);
    }

    private static List<Cell> empty(int onPaper) {
        return Collections.nCopies(onPaper, Cell.EMPTY);
    }

    private static Column second(Column column) {
        return new Column(
                column.key() + SECOND,
                column.heading(),
                column.unit(),
                column.kind(),
                column.widest(),
                column.onPaper());
    }
}
