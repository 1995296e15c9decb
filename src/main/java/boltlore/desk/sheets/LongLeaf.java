package boltlore.desk.sheets;

import boltlore.desk.frame.Call;
import boltlore.desk.frame.Stretch;
import boltlore.report.Block;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.Table;
import boltlore.report.html.HtmlWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A leaf of a sheet that is too long for a page of the desk, some rows at a time.
 *
 * @param html the rows that are shown, under what stands above the first ones
 * @param rows which of them are shown
 */
record LongLeaf(String html, Stretch<Integer> rows) {

    /** Rows differ in length: so much of the room is counted on. */
    private static final double FILLED = 0.8;

    private static final int FEWEST = 10;

    /**
     * The part of a leaf that the call asks for; all of it where it is short enough.
     *
     * @param longest signs of a page that is shown at once
     */
    static LongLeaf of(Report report, Page leaf, Call call, int longest, String path) {
        String whole = HtmlWriter.pages(report, page -> page.equals(leaf));
        int rows = leaf.tables().mapToInt(table -> table.rows().size()).sum();
        boolean fits = whole.length() <= longest;
        int most = fits ? Math.max(1, rows) : Math.max(FEWEST, (int) (FILLED * rows * longest / whole.length()));
        Stretch<Integer> shown = Stretch.of(IntStream.range(0, rows).boxed().toList(), call, most, path);
        return fits
                ? new LongLeaf(whole, shown)
                : new LongLeaf(
                        HtmlWriter.page(
                                report,
                                part(
                                        leaf,
                                        shown.first(),
                                        shown.first() + shown.rows().size())),
                        shown);
    }

    /** Rows are counted through all tables of the leaf. */
    private static Page part(Page leaf, int from, int to) {
        List<Block> blocks = new ArrayList<>();
        int before = 0;
        for (Block block : leaf.blocks()) {
            if (block instanceof Table table) {
                int first = Math.max(0, from - before);
                int last = Math.min(table.rows().size(), to - before);
                before += table.rows().size();
                if (first < last) {
                    blocks.add(new Table(
                            table.name(),
                            table.about(),
                            table.columns(),
                            table.rows().subList(first, last)));
                }
            } else if (from == 0) {
                blocks.add(block);
            }
        }
        return leaf.of(blocks);
    }
}
