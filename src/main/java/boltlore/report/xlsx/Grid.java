package boltlore.report.xlsx;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * The columns of a worksheet, which all blocks of a page share: the main table's, widened to fill the sheet or narrowed
 * to stay legible on it. Blocks that need other columns span several of them. Where that would print too small, each
 * block has columns of its own, and the grid has an edge wherever one of them has.
 */
final class Grid {

    /** Characters of the body type between the margins of A4, at full size. */
    private static final double PORTRAIT = 98;

    private static final double LANDSCAPE = 144;

    /** A page that is wider than this many times the sheet prints too small: 9 points become less than 8. */
    static final double WIDEST = 1.19;

    /** Edges that are closer are one, in characters. */
    private static final double SAME_EDGE = 0.3;

    private final List<Double> widths;
    /** Columns beside the paper. */
    private final List<Double> beside = new ArrayList<>();
    /** Of the blocks' own columns, from the left; empty where the blocks share the main table's. */
    private final NavigableSet<Double> edges;

    private Grid(List<Double> widths, NavigableSet<Double> edges) {
        this.widths = new ArrayList<>(widths);
        this.edges = edges;
    }

    /** @param small whether it takes the smallest type that is legible, though it has room for a larger one */
    static Grid of(List<ColumnWidth> main, boolean landscape, boolean small) {
        double most = sheet(landscape) * WIDEST;
        double sheet = small ? most : sheet(landscape);
        double usual = main.stream().mapToDouble(ColumnWidth::usual).sum();
        return new Grid(
                usual > sheet ? ColumnFit.narrowed(main, most) : ColumnFit.widened(main, sheet), new TreeSet<>());
    }

    /** Each of the tables with its own columns; as wide as the one that needs most. */
    static Grid ofOwnColumns(Collection<List<ColumnWidth>> tables, boolean landscape, boolean small) {
        double sheet = sheet(landscape);
        double total = small ? sheet * WIDEST : sheet;
        for (List<ColumnWidth> table : tables) {
            double usual = table.stream().mapToDouble(ColumnWidth::usual).sum();
            double least = table.stream().mapToDouble(ColumnWidth::least).sum();
            total = Math.max(total, Math.max(least, Math.min(usual, sheet * WIDEST)));
        }
        return new Grid(List.of(total), new TreeSet<>(List.of(0.0, total)));
    }

    /** Whether it prints in legible type. */
    boolean isLegible(boolean landscape) {
        return total() <= sheet(landscape) * WIDEST + 0.5;
    }

    /** Characters between the margins, at full size. */
    static double sheet(boolean landscape) {
        return landscape ? LANDSCAPE : PORTRAIT;
    }

    int columns() {
        return widths.size();
    }

    /** With those beside the paper. */
    int allColumns() {
        return widths.size() + beside.size();
    }

    double width(int column) {
        return column < widths.size() ? widths.get(column) : beside.get(column - widths.size());
    }

    /** Width of the columns from one up to but not including another. */
    double width(int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += width(i);
        }
        return sum;
    }

    double total() {
        return width(0, columns());
    }

    /** Which columns of the grid each column of a block covers: where each starts, and after the last where it ends. */
    record Spans(List<Integer> starts) {

        int start(int i) {
            return starts.get(i);
        }

        int span(int i) {
            return starts.get(i + 1) - starts.get(i);
        }

        /** Whether each column of the block is one of the grid. */
        boolean areSingle() {
            return starts.get(starts.size() - 1) - starts.get(0) == starts.size() - 1;
        }
    }

    /** Every column of a block takes as few as hold it; the grid grows where it is too narrow for all. */
    Spans span(List<ColumnWidth> block) {
        return edges.isEmpty() ? shared(block) : own(block);
    }

    /** The block's last columns, as many as there are widths, beside the paper; its last column before goes to the edge. */
    Spans beside(Spans onPaper, List<Double> more) {
        if (more.isEmpty()) {
            return onPaper;
        }
        for (int i = beside.size(); i < more.size(); i++) {
            beside.add(more.get(i));
        }
        List<Integer> starts =
                new ArrayList<>(onPaper.starts().subList(0, onPaper.starts().size() - 1));
        for (int i = 0; i <= more.size(); i++) {
            starts.add(columns() + i);
        }
        return new Spans(starts);
    }

    /** The first time, edges are added, so all blocks ask before one is laid. */
    private Spans own(List<ColumnWidth> block) {
        double total = edges.last();
        double usual = block.stream().mapToDouble(ColumnWidth::usual).sum();
        List<Double> own = usual > total ? ColumnFit.narrowed(block, total) : ColumnFit.widened(block, total);
        List<Double> asked = new ArrayList<>(List.of(0.0));
        double edge = 0;
        for (int i = 0; i < block.size(); i++) {
            edge += own.get(i);
            Double near = edges.floor(edge + SAME_EDGE);
            if (near == null || near < edge - SAME_EDGE) {
                edges.add(edge);
                near = edge;
            }
            asked.add(near);
        }
        List<Double> all = new ArrayList<>(edges);
        widths.clear();
        for (int i = 1; i < all.size(); i++) {
            widths.add(all.get(i) - all.get(i - 1));
        }
        return new Spans(asked.stream().map(all::indexOf).toList());
    }

    private Spans shared(List<ColumnWidth> block) {
        List<Integer> starts = new ArrayList<>(List.of(0));
        for (int i = 0; i < block.size(); i++) {
            starts.add(end(starts.get(i), block.get(i), block.size() - i - 1));
        }
        return new Spans(starts);
    }

    private int end(int start, ColumnWidth needed, int after) {
        if (start >= columns()) {
            widths.add(needed.usual());
            return start + 1;
        }
        // Text is content with a little less than it would like, rather than take a whole further column.
        double wanted = needed.gives() ? Math.max(needed.least(), 0.8 * needed.usual()) : needed.usual();
        int end = start + 1;
        while (width(start, end) < wanted && end + after < columns()) {
            end++;
        }
        double missing = needed.least() - width(start, end);
        if (missing > 0) {
            widths.set(end - 1, widths.get(end - 1) + missing);
        }
        return end;
    }
}
