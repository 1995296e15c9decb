package boltlore.report.text;

import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Printed;
import boltlore.report.Row;
import boltlore.report.Row.RowKind;
import boltlore.report.Table;
import boltlore.report.Wrapping;
import java.util.ArrayList;
import java.util.List;

/** A table whose columns are narrowed, and if that is not enough set one strip below the other, to fit the width. */
final class TextTable {

    private static final int GAP = Padding.GAP.length();

    private final Table table;
    private final String language;
    private final int[] widths;
    private final List<List<Integer>> strips;

    TextTable(Table table, int width, int keyColumns, String language) {
        this.table = table;
        this.language = language;
        this.widths = ColumnWidths.fit(table, width, language);
        this.strips = ColumnWidths.strips(
                widths, width, Math.min(keyColumns, table.columns().size() - 1));
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (List<Integer> strip : strips) {
            lines.addAll(lines.isEmpty() ? List.of() : List.of("", "(the same rows, further columns)"));
            lines.addAll(new Strip(strip).lines());
        }
        return lines;
    }

    /** Some of the columns, which stand side by side. */
    private final class Strip {

        private final List<Integer> columns;
        private final int total;

        Strip(List<Integer> columns) {
            this.columns = columns;
            this.total = columns.stream().mapToInt(i -> widths[i] + GAP).sum() - GAP;
        }

        List<String> lines() {
            List<String> lines = new ArrayList<>();
            List<List<String>> headings = columns.stream()
                    .map(i -> aligned(i, table.columns().get(i).headingWithUnit()))
                    .toList();
            lines.addAll(Padding.sideBySide(
                    headings, columns.stream().map(i -> widths[i]).toList()));
            lines.add("-".repeat(total));
            RowKind above = RowKind.GROUP;
            for (Row row : table.rows()) {
                if (saysNothing(row)) {
                    continue;
                }
                lines.addAll(before(row.kind(), above));
                lines.addAll(row.isPlain() ? plain(row) : worded(row));
                above = row.kind();
            }
            return lines;
        }

        /** A sub-total whose sums all stand in another strip. */
        private boolean saysNothing(Row row) {
            return this.columns != strips.get(0)
                    && (row.kind() == RowKind.SUBTOTAL || row.kind() == RowKind.TOTAL)
                    && columns.stream().allMatch(i -> row.cells().get(i) == Cell.EMPTY);
        }

        private List<String> before(RowKind kind, RowKind above) {
            return switch (kind) {
                case TOTAL -> List.of("=".repeat(total));
                case SUBTOTAL -> above == RowKind.SUBTOTAL ? List.of() : List.of("-".repeat(total));
                case GROUP -> above == RowKind.GROUP ? List.of() : List.of("");
                case PLAIN -> List.of();
            };
        }

        /** The words over the columns that are free for them, or above the cells where there is too little room. */
        private List<String> worded(Row row) {
            int covered = Math.max(
                    1, (int) columns.stream().filter(i -> i < row.wordsCover()).count());
            int room = columns.subList(0, covered).stream()
                            .mapToInt(i -> widths[i] + GAP)
                            .sum()
                    - GAP;
            boolean above = Wrapping.length(row.words()) > room;
            List<String> lines = new ArrayList<>(above ? Wrapping.lines(row.words(), total) : List.of());
            List<Integer> filled = columns.subList(covered, columns.size());
            boolean empty = filled.stream().allMatch(i -> row.cells().get(i) == Cell.EMPTY);
            if (above && empty) {
                return lines;
            }
            List<List<String>> stacks = new ArrayList<>(List.of(List.of(above ? "" : row.words())));
            filled.forEach(i -> stacks.add(cell(row, i)));
            List<Integer> stackWidths = new ArrayList<>(List.of(room));
            filled.forEach(i -> stackWidths.add(widths[i]));
            lines.addAll(Padding.sideBySide(stacks, stackWidths));
            return lines;
        }

        private List<String> plain(Row row) {
            return Padding.sideBySide(
                    columns.stream().map(i -> cell(row, i)).toList(),
                    columns.stream().map(i -> widths[i]).toList());
        }
    }

    private List<String> cell(Row row, int i) {
        Column column = table.columns().get(i);
        boolean code = column.kind().form() == Kind.Form.CODE;
        String text = code ? "" : Printed.inColumn(column.kind(), row.cells().get(i), language);
        if (text.isEmpty() && row.isPlain()) {
            text = switch (column.kind().form()) {
                case TICK -> "[ ]";
                case BLANK, SIGNATURE -> "_".repeat(widths[i]);
                case TEXT, WHOLE, DECIMAL, QUANTITY, MONEY, PERCENT, DATE, CODE -> "";
            };
        }
        return aligned(i, text);
    }

    private List<String> aligned(int i, String text) {
        boolean right = table.columns().get(i).kind().form().isNumber();
        return Wrapping.lines(text, widths[i]).stream()
                .map(line -> right ? Padding.right(line, widths[i]) : Padding.left(line, widths[i]))
                .toList();
    }
}
