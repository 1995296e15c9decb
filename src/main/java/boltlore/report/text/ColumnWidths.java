package boltlore.report.text;

import boltlore.report.Column;
import boltlore.report.Kind.Form;
import boltlore.report.Printed;
import boltlore.report.Row;
import boltlore.report.Table;
import boltlore.report.Wrapping;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** How wide each column is, and which columns stand side by side. */
final class ColumnWidths {

    private static final int GAP = Padding.GAP.length();
    private static final int LONGEST_WORD_KEPT = 20;
    private static final int TO_WRITE_IN = 8;

    private ColumnWidths() {}

    /** Widths that hold each column's text, text columns narrowed evenly as far as the line asks for it. */
    static int[] fit(Table table, int lineWidth, String language) {
        int count = table.columns().size();
        int[] widths =
                IntStream.range(0, count).map(i -> natural(table, i, language)).toArray();
        int over = IntStream.of(widths).sum() + GAP * (count - 1) - lineWidth;
        int[] floors =
                IntStream.range(0, count).map(i -> floor(table, i, language)).toArray();
        while (over > 0) {
            int widest = widestThatCanGive(widths, floors);
            if (widest < 0) {
                break;
            }
            widths[widest]--;
            over--;
        }
        return widths;
    }

    /** Strips of columns that fit the line, each led by the key columns. */
    static List<List<Integer>> strips(int[] widths, int lineWidth, int keyColumns) {
        List<Integer> keys = IntStream.range(0, keyColumns).boxed().toList();
        int keyWidth = keys.stream().mapToInt(i -> widths[i] + GAP).sum();
        List<List<Integer>> strips = new ArrayList<>();
        List<Integer> strip = new ArrayList<>(keys);
        int used = keyWidth;
        for (int i = keyColumns; i < widths.length; i++) {
            if (used + widths[i] > lineWidth && strip.size() > keyColumns) {
                strips.add(strip);
                strip = new ArrayList<>(keys);
                used = keyWidth;
            }
            strip.add(i);
            used += widths[i] + GAP;
        }
        strips.add(strip);
        return strips;
    }

    private static int natural(Table table, int i, String language) {
        Column column = table.columns().get(i);
        int heading = Wrapping.longestWord(column.headingWithUnit());
        if (column.kind().form() == Form.CODE) {
            return heading;
        }
        int cells = table.rows().stream()
                .filter(row -> row.cells().size() > i)
                .mapToInt(row -> length(column, row, i, language))
                .max()
                .orElse(0);
        boolean text = column.kind().form() == Form.TEXT;
        int byHand = column.kind().form().isByHand() ? TO_WRITE_IN : 0;
        return Math.max(Math.max(heading, byHand), text ? Math.min(cells, column.widest()) : cells);
    }

    private static int length(Column column, Row row, int i, String language) {
        return Wrapping.length(Printed.inColumn(column.kind(), row.cells().get(i), language));
    }

    /** A column is not narrowed below its words, unless they are very long; one of numbers not at all. */
    private static int floor(Table table, int i, String language) {
        Column column = table.columns().get(i);
        if (column.kind().form() != Form.TEXT) {
            return Integer.MAX_VALUE;
        }
        int longestWord = table.rows().stream()
                .mapToInt(row -> Wrapping.longestWord(
                        Printed.inColumn(column.kind(), row.cells().get(i), language)))
                .max()
                .orElse(0);
        int heading = Wrapping.longestWord(column.headingWithUnit());
        return Math.max(heading, Math.min(LONGEST_WORD_KEPT, longestWord));
    }

    private static int widestThatCanGive(int[] widths, int[] floors) {
        int widest = -1;
        for (int i = 0; i < widths.length; i++) {
            if (widths[i] > floors[i] && (widest < 0 || widths[i] > widths[widest])) {
                widest = i;
            }
        }
        return widest;
    }
}
