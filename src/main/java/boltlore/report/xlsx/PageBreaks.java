package boltlore.report.xlsx;

import boltlore.report.BarCharts;
import boltlore.report.Block;
import boltlore.report.Heading;
import boltlore.report.Note;
import boltlore.report.Particulars;
import boltlore.report.Row;
import boltlore.report.Row.RowKind;
import boltlore.report.Signatures;
import boltlore.report.Table;
import boltlore.report.xlsx.LaidPage.LaidTable;
import boltlore.report.xlsx.LaidPage.Stretch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Where one sheet of paper ends and the next begins, and which table's headings stand on top of each: of all ways the
 * one that does least harm, by dynamic programming over the rows. A workbook can repeat the headings of one table only.
 *
 * @param after rows of the grid that end a sheet of paper
 * @param repeated the table whose headings stand on each later sheet of paper; empty where none runs over
 */
record PageBreaks(List<Integer> after, Optional<LaidTable> repeated) {

    /** Margins of the paper in inches. */
    static final double LEFT = 0.5;

    static final double RIGHT = 0.45;
    static final double TOP = 0.45;
    static final double BOTTOM = 0.5;

    private static final double POINTS_PER_INCH = 72;
    private static final double A4_SHORT = 595.3;
    private static final double A4_LONG = 841.9;

    /** What a column's unit prints in LibreOffice, in points; elsewhere a little more, and so more fits one sheet. */
    private static final double CHARACTER = 5;

    /** What a program's rounding of heights may add up to on one sheet of paper, in points. */
    private static final double ROUNDED = 8;

    /** Less of a sheet of paper than this is a waste of it. */
    private static final double THIRD = 1 / 3.0;

    private static final double A_SHEET = 5_000;
    private static final double NEVER = 10_000_000;
    private static final double TORN = 100_000;
    private static final double HEADLESS = 50_000;
    private static final double WRONG_HEADING = 30_000;
    private static final double WASTE = 20_000;
    private static final double LONE_ROW = 2_000;
    /** A table's heading, with what is said before the table, on another sheet of paper than its first rows. */
    private static final double LEFT_BEHIND = 6_000;

    private static final double UNLED = 300;
    private static final double WITHIN_GROUP = 30;
    private static final double SPLIT = 200;
    /** Rows of a group on another sheet of paper than its heading, which was to be said again where a first look broke it. */
    private static final double UNSAID = 10_000;

    /** A sheet of paper that is left empty but for its first line: worth a break within a group, not a table's in two. */
    private static final double EMPTY = 300;

    /** Height between the margins, in points of a grid that is shrunk to the sheet's width. */
    private static double paper(LaidPage page) {
        boolean landscape = page.page().print().landscape();
        double wide = (landscape ? A4_LONG : A4_SHORT) - POINTS_PER_INCH * (LEFT + RIGHT);
        double high = (landscape ? A4_SHORT : A4_LONG) - POINTS_PER_INCH * (TOP + BOTTOM);
        return high * Math.max(1, page.grid().total() * CHARACTER / wide);
    }

    /** The breaks of a page whose tables stand as they are. */
    static PageBreaks of(LaidPage page) {
        return of(page, Set.of());
    }

    /** The breaks of a page whose tables will be divided where one of those that may be runs over. */
    static PageBreaks dividing(LaidPage page) {
        return of(page, page.tablesThat(Divided::splits));
    }

    private static PageBreaks of(LaidPage page, Set<Table> splitting) {
        double paper = paper(page) - ROUNDED;
        Set<Table> headedAgain = page.tablesThat(table -> !splitting.contains(table) && Divided.hasGroups(table));
        Ways best = new Ways(page, paper, Optional.empty(), splitting, headedAgain);
        if (best.breaks().after().isEmpty()) {
            return best.breaks();
        }
        for (LaidTable table : page.tables().values()) {
            if (!table.table().rows().isEmpty() && table.table().isPrinted()) {
                Ways ways = new Ways(page, paper, Optional.of(table), splitting, headedAgain);
                best = ways.harm() < best.harm() ? ways : best;
            }
        }
        return best.breaks();
    }

    /** All ways to break a page while one table's headings are repeated. */
    private static final class Ways {

        private final LaidPage page;
        private final List<Stretch> stretches;
        private final double paper;
        private final Optional<LaidTable> repeated;
        /** Its last row, asked for every pair of rows: as a lambda made anew for each, it took a sixth of a whole run. */
        private final int lastRepeated;
        /** Tables that go on as others with the same headings. */
        private final Set<Table> splitting;
        /** Those of the rest whose groups are headed again: asked once a table, for it looks at every cell. */
        private final Set<Table> headedAgain;

        private final int size;
        private final double[] upTo;
        /** The same without the gap before the next block, which may lie in what is kept for rounding. */
        private final double[] filled;

        private final int[] substance;
        private final int[] signed;
        /** Height of the headings that are repeated above what begins with a row. */
        private final double[] above;

        private final double[] harmBefore;
        private final double[] least;
        private final int[] from;

        Ways(LaidPage page, double paper, Optional<LaidTable> repeated, Set<Table> splitting, Set<Table> headedAgain) {
            this.page = page;
            this.stretches = page.printedStretches();
            this.paper = paper;
            this.repeated = repeated;
            this.lastRepeated = repeated.map(LaidTable::lastRow).orElse(Integer.MAX_VALUE);
            this.splitting = splitting;
            this.headedAgain = headedAgain;
            this.size = page.printedRows();
            this.upTo = new double[size + 1];
            this.filled = new double[size + 1];
            this.substance = new int[size + 1];
            this.signed = new int[size + 1];
            this.above = new double[size + 1];
            this.harmBefore = new double[size + 1];
            this.least = new double[size + 1];
            this.from = new int[size + 1];
            Arrays.fill(harmBefore, NEVER);
            for (int row = 0; row < size; row++) {
                upTo[row + 1] = upTo[row] + page.rows().get(row).height();
            }
            System.arraycopy(upTo, 0, filled, 0, size + 1);
            for (int i = 1; i < stretches.size(); i++) {
                filled[stretches.get(i).first()] = upTo[stretches.get(i - 1).last() + 1];
            }
            count();
            head();
            for (int i = 0; i < stretches.size(); i++) {
                weigh(i);
            }
            search();
        }

        double harm() {
            return least[size];
        }

        PageBreaks breaks() {
            List<Integer> after = new ArrayList<>();
            for (int row = from[size]; row > 0; row = from[row]) {
                after.add(0, row - 1);
            }
            Optional<LaidTable> over = repeated.filter(
                    table -> after.stream().anyMatch(row -> row >= table.firstRow() && row < table.lastRow()));
            return new PageBreaks(after, over);
        }

        /** How many rows before each say something, and how many are signed on. */
        private void count() {
            int[] kinds = new int[size];
            for (Stretch stretch : stretches) {
                boolean signs = stretch.block() instanceof Signatures;
                boolean leads = stretch.block() instanceof Heading;
                Arrays.fill(kinds, stretch.first(), stretch.last() + 1, signs ? 2 : leads ? 0 : 1);
            }
            for (int row = 0; row < size; row++) {
                substance[row + 1] = substance[row] + (kinds[row] == 1 ? 1 : 0);
                signed[row + 1] = signed[row] + (kinds[row] == 2 ? 1 : 0);
            }
        }

        private void weigh(int i) {
            Stretch stretch = stretches.get(i);
            if (i > 0) {
                harmBefore[stretch.first()] =
                        leads(i) ? LEFT_BEHIND : between(stretches.get(i - 1).block(), stretch.block());
            }
            if (stretch.block() instanceof Table table) {
                within(table, stretch.first());
            } else {
                double torn = stretch.block() instanceof BarCharts ? NEVER : TORN;
                Arrays.fill(harmBefore, stretch.first() + 1, stretch.last() + 1, torn);
            }
        }

        /** Whether a heading and nothing but notes stand between the break before that block and the table that they lead to. */
        private boolean leads(int i) {
            int before = i - 1;
            while (before >= 0 && block(before) instanceof Note) {
                before--;
            }
            int after = i;
            while (after < stretches.size() && block(after) instanceof Note) {
                after++;
            }
            return before >= 0
                    && before < i - 1
                    && after < stretches.size()
                    && block(before) instanceof Heading
                    && (block(after) instanceof Table || block(after) instanceof Particulars);
        }

        private Block block(int i) {
            return stretches.get(i).block();
        }

        private static double between(Block before, Block after) {
            if (before instanceof Heading) {
                return NEVER;
            }
            if (after instanceof Signatures) {
                return TORN;
            }
            return before instanceof Note && (after instanceof Table || after instanceof Particulars) ? UNLED : 0;
        }

        private void within(Table table, int heading) {
            boolean repeats = repeated.filter(each -> each.table().id().equals(table.id()))
                    .isPresent();
            double headless = repeats ? 0 : splitting.contains(table) ? SPLIT : HEADLESS;
            double unsaid = headedAgain.contains(table) ? UNSAID : 0;
            for (int i = 0; i < table.rows().size(); i++) {
                double harm = headless + within(table.rows(), i);
                harmBefore[heading + 1 + i] = harm == headless + WITHIN_GROUP ? harm + unsaid : harm;
            }
        }

        private static double within(List<Row> rows, int next) {
            if (next == 0 || rows.get(next - 1).kind() == RowKind.GROUP) {
                return NEVER;
            }
            RowKind kind = rows.get(next).kind();
            if (kind == RowKind.SUBTOTAL || kind == RowKind.TOTAL || next == 1 || next == rows.size() - 1) {
                return LONE_ROW;
            }
            return kind == RowKind.GROUP ? 0 : WITHIN_GROUP;
        }

        private void search() {
            Arrays.fill(least, Double.POSITIVE_INFINITY);
            least[0] = 0;
            for (int end = 1; end <= size; end++) {
                // From the fullest sheet on, which does least harm of its own: few others are worth to be weighed at
                // all.
                double atLeast = A_SHEET + (end < size ? harmBefore[end] : 0);
                int fullest = end - 1;
                while (fullest > 0 && filled[end] - upTo[fullest - 1] + above[fullest - 1] <= paper) {
                    fullest--;
                }
                for (int start = fullest; start < end; start++) {
                    if (least[start] + atLeast <= least[end]) {
                        double harm = least[start] + harmOf(start, end, filled[end] - upTo[start] + above[start]);
                        if (harm <= least[end]) {
                            least[end] = harm;
                            from[end] = start;
                        }
                    }
                }
            }
        }

        private void head() {
            repeated.ifPresent(table -> Arrays.fill(
                    above,
                    table.firstRow(),
                    size + 1,
                    page.rows().get(table.firstRow() - 1).height()));
            for (Stretch stretch : stretches) {
                if (stretch.block() instanceof Table table && splitting.contains(table)) {
                    double headings = page.rows().get(stretch.first()).height();
                    Arrays.fill(above, stretch.first() + 1, stretch.last() + 1, headings);
                    Divided.continueGroups(table, page, stretch.first() + 1, above);
                }
            }
        }

        private double harmOf(int start, int end, double height) {
            double harm = A_SHEET + (end < size ? harmBefore[end] : 0);
            if (end < size) {
                double empty = Math.max(0, 1 - height / paper);
                harm += EMPTY * empty * empty + (height < paper * THIRD ? WASTE : 0);
            }
            if (signed[end] > signed[start] && substance[end] == substance[start]) {
                harm += TORN;
            }
            return start > lastRepeated ? harm + WRONG_HEADING : harm;
        }
    }
}
