package boltlore.report.xlsx;

import boltlore.report.BarChart;
import boltlore.report.Block;
import boltlore.report.Cell;
import boltlore.report.Page;
import boltlore.report.Row;
import boltlore.report.Table;
import boltlore.report.drawing.Drawing;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A page with every cell at its place. Rows and columns are those of the grid, from 0.
 *
 * @param tables by name
 * @param mainTable name of the widest table, or empty
 * @param particulars where each value stands, by the block's name and the particular's key
 * @param dates lines for the date of a signature
 * @param codes texts that machines read, each over its cell
 * @param stretches which rows each block takes, from top to bottom; between two lies a strip of white
 */
record LaidPage(
        Page page,
        Grid grid,
        String mainTable,
        List<LaidRow> rows,
        Map<String, LaidTable> tables,
        Map<String, Map<String, Spot>> particulars,
        List<Spot> dates,
        List<LaidChart> charts,
        List<LaidPicture> pictures,
        List<LaidCode> codes,
        List<Stretch> stretches) {

    /** A page on which nothing stands yet. */
    LaidPage(Page page, Grid grid, String mainTable) {
        this(
                page,
                grid,
                mainTable,
                new ArrayList<>(),
                new LinkedHashMap<>(),
                new LinkedHashMap<>(),
                new ArrayList<>(),
                new ArrayList<>(),
                new ArrayList<>(),
                new ArrayList<>(),
                new ArrayList<>());
    }

    /** Its tables of that sort, told apart by which they are, not by what they say. */
    Set<Table> tablesThat(Predicate<Table> wanted) {
        return stretches.stream()
                .flatMap(stretch -> stretch.block() instanceof Table table ? Stream.of(table) : Stream.empty())
                .filter(wanted)
                .collect(Collectors.toCollection(() -> Collections.newSetFromMap(new IdentityHashMap<>())));
    }

    /** A page with the sheets of paper that it takes, which are looked for once. */
    record Paged(LaidPage page, PageBreaks breaks) {

        static Paged of(LaidPage page) {
            return new Paged(page, PageBreaks.of(page));
        }
    }

    /** The rows of a block, from its first to its last. */
    record Stretch(Block block, int first, int last) {}

    record Spot(int column, int row) {}

    /** Neighbouring rows, from the first to the last, that one range can name. */
    record Rows(int first, int last) {}

    /**
     * A row of the grid.
     *
     * @param height in points
     * @param block name of the block that it belongs to, where that has one
     */
    record LaidRow(double height, String block, List<LaidCell> cells) {

        /** A strip of white. */
        static LaidRow gap(double height) {
            return new LaidRow(height, "", List.of());
        }
    }

    /**
     * A cell at its place in a row.
     *
     * @param span columns that it covers, at least 1
     * @param lead bold words before the cell's text, mostly empty
     */
    record LaidCell(int column, int span, CellStyleKey style, Cell cell, String lead) {

        LaidCell(int column, int span, CellStyleKey style, Cell cell) {
            this(column, span, style, cell, "");
        }
    }

    /** @param firstRow that the table's first row stands in; its heading stands in the row above */
    record LaidTable(Table table, int firstRow, Grid.Spans spans) {

        int column(String key) {
            return spans.start(table.column(key));
        }

        int lastRow() {
            return firstRow + table.rows().size() - 1;
        }

        List<Rows> rows(Predicate<Row> counted) {
            List<Rows> runs = new ArrayList<>();
            int start = -1;
            for (int i = 0; i <= table.rows().size(); i++) {
                boolean counts =
                        i < table.rows().size() && counted.test(table.rows().get(i));
                if (counts && start < 0) {
                    start = i;
                } else if (!counts && start >= 0) {
                    runs.add(new Rows(firstRow + start, firstRow + i - 1));
                    start = -1;
                }
            }
            return runs;
        }

        /** The plain rows of all groups at once: a sum for each group would else look through all rows for each. */
        Map<String, List<Rows>> plainRowsByGroup() {
            Map<String, List<Rows>> byGroup = new HashMap<>();
            for (Rows run : rows(Row::isPlain)) {
                int start = run.first();
                for (int i = start; i <= run.last(); i++) {
                    if (i == run.last() || !group(i).equals(group(i + 1))) {
                        byGroup.computeIfAbsent(group(i), none -> new ArrayList<>())
                                .add(new Rows(start, i));
                        start = i + 1;
                    }
                }
            }
            return byGroup;
        }

        private String group(int row) {
            return table.rows().get(row - firstRow).group();
        }
    }

    /**
     * A chart over cells that are left white.
     *
     * @param from left edge in characters from the left of the grid
     * @param to right edge
     */
    record LaidChart(BarChart chart, double from, double to, Rows rows) {}

    /** A drawing over one row that is left white; sizes as it is shown, in points. */
    record LaidPicture(Drawing drawing, int row, double width, double height) {}

    /** A text that machines read, over the cell that it stands in. */
    record LaidCode(String text, Spot spot) {}

    LaidTable table(String name) {
        return Objects.requireNonNull(tables.get(name), name);
    }

    Spot spot(String block, String key) {
        return Objects.requireNonNull(
                Objects.requireNonNull(particulars.get(block), block).get(key), key);
    }

    /** How many rows stand on paper, the first of the page. */
    int printedRows() {
        return stretches.stream()
                .filter(stretch -> stretch.block() instanceof Table table && !table.isPrinted())
                .mapToInt(Stretch::first)
                .findFirst()
                .orElse(rows.size());
    }

    /** What stands on paper. */
    List<Stretch> printedStretches() {
        int rows = printedRows();
        return stretches.stream().filter(stretch -> stretch.first() < rows).toList();
    }

    /** The table whose heading row stays in view. */
    Optional<LaidTable> main() {
        return Optional.ofNullable(tables.get(mainTable));
    }
}
