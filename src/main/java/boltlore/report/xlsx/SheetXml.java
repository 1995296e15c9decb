package boltlore.report.xlsx;

import boltlore.report.Utf8;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A worksheet part (ECMA-376 part 1, 18.3.1.99): its elements must stand in exactly this order. */
final class SheetXml {

    private static final String MARGINS =
            "<pageMargins left=\"0.5\" right=\"0.45\" top=\"0.55\" bottom=\"0.6\" header=\"0.25\" footer=\"0.3\"/>";

    private final LaidPage page;
    private final int number;
    private final Styles styles;
    private final SharedTexts texts;
    private final FormulaText formulas;
    private final List<String> merged = new ArrayList<>();

    SheetXml(LaidPage page, int number, Styles styles, SharedTexts texts, FormulaText formulas) {
        this.page = page;
        this.number = number;
        this.styles = styles;
        this.texts = texts;
        this.formulas = formulas;
    }

    /** @param drawing relation to the drawing part, or empty */
    Utf8 xml(String drawing) {
        Utf8 xml = new Utf8(64 * 1024).append(Xml.HEAD);
        xml.append("<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"")
                .append(" xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\">")
                .append("<sheetPr><pageSetUpPr fitToPage=\"1\"/></sheetPr>")
                .append("<dimension ref=\"A1:")
                .append(Ref.cell(page.grid().columns() - 1, page.rows().size() - 1))
                .append("\"/>")
                .append(PrintXml.view(page, number == 0))
                .append("<sheetFormatPr defaultRowHeight=\"");
        points(xml, Heights.line()).append("\"/>");
        columns(xml);
        rows(xml);
        merges(xml);
        xml.append(MARGINS).append(PrintXml.setup(page.page().print()));
        if (!drawing.isEmpty()) {
            xml.append("<drawing r:id=\"").append(drawing).append("\"/>");
        }
        return xml.append("</worksheet>");
    }

    private void columns(Utf8 xml) {
        xml.append("<cols>");
        for (int i = 0; i < page.grid().columns(); i++) {
            xml.append("<col min=\"")
                    .append(i + 1)
                    .append("\" max=\"")
                    .append(i + 1)
                    .append("\" width=\"");
            points(xml, page.grid().width(i)).append("\" customWidth=\"1\"/>");
        }
        xml.append("</cols>");
    }

    private void rows(Utf8 xml) {
        String[] blocks = blocksByRow();
        CellXml cells = new CellXml(xml, page.grid().columns(), styles, texts, formulas);
        xml.append("<sheetData>");
        for (int row = 0; row < page.rows().size(); row++) {
            LaidRow laid = page.rows().get(row);
            xml.append("<row r=\"").append(row + 1).append("\" ht=\"");
            points(xml, laid.height()).append("\" customHeight=\"1\">");
            cells.go(new Addresses.Here(number, blocks[row], row));
            for (LaidCell cell : laid.cells()) {
                cells.append(cell);
                if (cell.span() > 1) {
                    merged.add(Ref.cell(cell.column(), row) + ":" + Ref.cell(cell.column() + cell.span() - 1, row));
                }
            }
            xml.append("</row>");
        }
        xml.append("</sheetData>");
    }

    private void merges(Utf8 xml) {
        if (!merged.isEmpty()) {
            xml.append("<mergeCells count=\"").append(merged.size()).append("\">");
            merged.forEach(
                    range -> xml.append("<mergeCell ref=\"").append(range).append("\"/>"));
            xml.append("</mergeCells>");
        }
    }

    /** The name of the block that each row belongs to, where it has one. */
    private String[] blocksByRow() {
        String[] blocks = new String[page.rows().size()];
        Arrays.fill(blocks, "");
        page.tables().forEach((name, table) -> Arrays.fill(blocks, table.firstRow(), table.lastRow() + 1, name));
        page.particulars().forEach((name, spots) -> spots.values().forEach(spot -> blocks[spot.row()] = name));
        return blocks;
    }

    /** With two decimals, which is finer than any printer. */
    private static Utf8 points(Utf8 xml, double value) {
        int hundredths = (int) Math.round(value * 100);
        xml.append(hundredths / 100).append('.');
        return xml.append(hundredths / 10 % 10).append(hundredths % 10);
    }
}
