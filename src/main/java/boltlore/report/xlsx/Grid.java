package boltlore.report.xlsx;

import java.util.ArrayList;
import java.util.List;

/**
 * The columns of a worksheet, which all blocks of a page share. Blocks that need other columns than the main table's
 * span several of them.
 */
final class Grid {

    private final List<Double> widths;

    Grid(List<Double> widths) {
        this.widths = new ArrayList<>(widths);
    }

    int columns() {
        return widths.size();
    }

    double width(int column) {
        return widths.get(column);
    }

    /** Width of the columns from one up to but not including another. */
    double width(int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += widths.get(i);
        }
        return sum;
    }

    double total() {
        return width(0, columns());
    }

    /**
     * Where each need starts, and after the last where it ends: every need takes as few columns as hold it, and the grid
     * grows where it is too narrow for all.
     */
    Spans span(List<Need> needs) {
        int[] starts = new int[needs.size() + 1];
        for (int i = 0; i < needs.size(); i++) {
            int after = needs.size() - i - 1;
            starts[i + 1] = end(starts[i], needs.get(i), after);
        }
        return new Spans(starts);
    }

    private int end(int start, Need need, int after) {
        if (start >= columns()) {
            widths.add(need.usual());
            return start + 1;
        }
        int end = start + 1;
        while (width(start, end) < wanted(need) && end + after < columns()) {
            end++;
        }
        double missing = need.least() - width(start, end);
        if (missing > 0) {
            widths.set(end - 1, widths.get(end - 1) + missing);
        }
        return end;
    }

    /** Text is content with a little less than it would like, rather than take a whole further column. */
    private static double wanted(Need need) {
        return need.gives() ? Math.max(need.least(), 0.8 * need.usual()) : need.usual();
    }
}
