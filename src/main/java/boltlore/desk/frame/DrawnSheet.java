package boltlore.desk.frame;

import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.html.HtmlWriter;
import boltlore.trades.orders.SheetFormats;
import java.util.Arrays;
import java.util.List;

/**
 * A room's sheet within a page: one leaf of it at a time, or all of them for the printer, and its files.
 *
 * @param leaves names of its pages
 * @param chosen those that are shown; none where all are
 * @param html the leaf as elements, escaped already
 * @param path address of the page, with a query begun
 * @param files names of the files that it may be taken as
 */
public record DrawnSheet(List<String> leaves, List<String> chosen, String html, String path, List<String> files) {

    private static final String LEAF = "leaf";
    private static final String FILE = "file";
    private static final String ALL = "all";

    /**
     * The leaf that the call asks for.
     *
     * @param path with its query, such as "/fabrication/cut?order=BL-1001"
     * @param first shown where none is asked for; the first of all where there are none of these
     */
    public static DrawnSheet of(Report report, Call call, String path, String... first) {
        List<String> leaves = report.pages().stream().map(Page::name).toList();
        String asked = call.said(LEAF);
        boolean all = asked.equals(ALL);
        List<String> usual = Arrays.stream(first).filter(leaves::contains).toList();
        List<String> chosen = leaves.contains(asked) ? List.of(asked) : usual.isEmpty() ? leaves.subList(0, 1) : usual;
        return new DrawnSheet(
                leaves,
                all ? List.of() : chosen,
                HtmlWriter.within(report, page -> all || chosen.contains(page.name())),
                path,
                List.of(report.file() + ".xlsx"));
    }

    /** The file of that sheet, where the call asks for it in place of the page. */
    public static boolean isAsked(Call call) {
        return !call.said(FILE).isEmpty();
    }

    public static Answer handed(Report report, Call call) {
        return SheetFormats.write(List.of(report)).stream()
                .filter(file -> file.name().equals(call.said(FILE)))
                .findFirst()
                .<Answer>map(Answer.Handed::new)
                .orElseGet(() -> new Answer.Missing("There is no such file of this sheet."));
    }
}
