package boltlore.report.xlsx;

import boltlore.report.PrintSetup;
import java.util.Optional;

/** How a worksheet prints and what stays in view on the screen. */
final class PrintXml {

    /** The paper's number for A4 (ECMA-376 part 1, 18.3.1.63). */
    private static final int A4 = 9;

    /** More rows than this frozen would leave no room on a small screen. */
    private static final int MOST_FROZEN = 14;

    /** A second table of more rows than this may end on a sheet of its own, under the wrong heading row. */
    private static final int SHORT_TABLE = 15;

    /** A header or footer holds no more (a limit that Excel documents), codes included. */
    private static final int LONGEST_LINE = 120;

    private static final String SMALL = "&amp;8 ";

    private PrintXml() {}

    static String setup(PrintSetup print) {
        return "<pageSetup paperSize=\"" + A4 + "\" fitToWidth=\"1\" fitToHeight=\"0\" orientation=\""
                + (print.landscape() ? "landscape" : "portrait") + "\"/><headerFooter><oddHeader>"
                + (print.header().isEmpty() ? "" : "&amp;L" + SMALL + line(print.header()))
                + "</oddHeader><oddFooter>"
                + (print.footer().isEmpty() ? "" : "&amp;L" + SMALL + line(print.footer()))
                + "&amp;R" + SMALL + line(print.count().before()) + "&amp;P"
                + line(print.count().between())
                + "&amp;N</oddFooter></headerFooter>";
    }

    private static String line(String text) {
        String fitting = text.length() > LONGEST_LINE ? text.substring(0, LONGEST_LINE) : text;
        return Xml.escaped(fitting.replace("&", "&&"));
    }

    static String view(LaidPage page, boolean first) {
        String view = "<sheetViews><sheetView showGridLines=\"0\"" + (first ? " tabSelected=\"1\"" : "")
                + " workbookViewId=\"0\"";
        int rows = page.main()
                .map(LaidTable::firstRow)
                .filter(row -> row <= MOST_FROZEN)
                .orElse(0);
        int columns = page.main().map(table -> frozenColumns(page, table)).orElse(0);
        if (rows == 0 && columns == 0) {
            return view + "/></sheetViews>";
        }
        String pane = rows > 0 && columns > 0 ? "bottomRight" : rows > 0 ? "bottomLeft" : "topRight";
        return view + "><pane" + (columns > 0 ? " xSplit=\"" + columns + "\"" : "")
                + (rows > 0 ? " ySplit=\"" + rows + "\"" : "") + " topLeftCell=\"" + Ref.cell(columns, rows)
                + "\" activePane=\"" + pane + "\" state=\"frozen\"/><selection pane=\"" + pane
                + "\"/></sheetView></sheetViews>";
    }

    private static int frozenColumns(LaidPage page, LaidTable table) {
        int asked = Math.min(
                page.page().print().frozenColumns(), table.table().columns().size() - 1);
        return asked <= 0 ? 0 : table.spans().start(asked);
    }

    /**
     * The heading row that is repeated on every sheet: the main table's, unless it is short itself or would stand above
     * another's rows.
     */
    static Optional<Integer> repeatedRow(LaidPage page) {
        return page.main()
                .filter(main -> main.table().rows().size() > SHORT_TABLE)
                .filter(main -> page.tables().values().stream()
                        .filter(table -> table.firstRow() > main.firstRow())
                        .allMatch(table -> table.table().rows().size() <= SHORT_TABLE))
                .map(LaidTable::headingRow);
    }
}
