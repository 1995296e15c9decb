package boltlore.sheets.xlsx;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

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
    String xml(String drawing) {
        StringBuilder xml = new StringBuilder(64 * 1024).append(Xml.HEAD);
        xml.append("<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"")
                .append(" xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\">")
                .append("<sheetPr><pageSetUpPr fitToPage=\"1\"/></sheetPr>")
                .append("<dimension ref=\"A1:")
                .append(Ref.cell(page.grid().columns() - 1, page.rows().size() - 1))
                .append("\"/>")
                .append(PrintXml.view(page, number == 0))
                .append("<sheetFormatPr defaultRowHeight=\"")
                .append(points(Heights.line()))
                .append("\"/>");
        columns(xml);
        rows(xml);
        merges(xml);
        xml.append(MARGINS).append(PrintXml.setup(page.page().print()));
        if (!drawing.isEmpty()) {
            xml.append("<drawing r:id=\"").append(drawing).append("\"/>");
        }
        return xml.append("</worksheet>").toString();
    }

    private void columns(StringBuilder xml) {
        xml.append("<cols>");
        for (int i = 0; i < page.grid().columns(); i++) {
            xml.append("<col min=\"")
                    .append(i + 1)
                    .append("\" max=\"")
                    .append(i + 1)
                    .append("\" width=\"");
            xml.append(points(page.grid().width(i))).append("\" customWidth=\"1\"/>");
        }
        xml.append("</cols>");
    }

    private void rows(StringBuilder xml) {
        Map<Integer, String> blocks = blocksByRow();
        CellXml cells = new CellXml(xml, styles, texts, formulas);
        xml.append("<sheetData>");
        for (int row = 0; row < page.rows().size(); row++) {
            LaidRow laid = page.rows().get(row);
            xml.append("<row r=\"").append(row + 1).append("\" ht=\"").append(points(laid.height()));
            xml.append("\" customHeight=\"1\">");
            Addresses.Here here = new Addresses.Here(number, blocks.getOrDefault(row, ""), row);
            for (LaidCell cell : laid.cells()) {
                cells.append(cell, here);
                if (cell.span() > 1) {
                    merged.add(Ref.cell(cell.column(), row) + ":" + Ref.cell(cell.column() + cell.span() - 1, row));
                }
            }
            xml.append("</row>");
        }
        xml.append("</sheetData>");
    }

    private void merges(StringBuilder xml) {
        if (!merged.isEmpty()) {
            xml.append("<mergeCells count=\"").append(merged.size()).append("\">");
            merged.forEach(
                    range -> xml.append("<mergeCell ref=\"").append(range).append("\"/>"));
            xml.append("</mergeCells>");
        }
    }

    private Map<Integer, String> blocksByRow() {
        Map<Integer, String> blocks = new HashMap<>();
        page.tables().forEach((name, table) -> {
            for (int row = table.firstRow(); row <= table.lastRow(); row++) {
                blocks.put(row, name);
            }
        });
        page.particulars().forEach((name, spots) -> spots.values().forEach(spot -> blocks.put(spot.row(), name)));
        return blocks;
    }

    /** With two decimals, which is finer than any printer. */
    static String points(double value) {
        return BigDecimal.valueOf(Math.round(value * 100), 2).toPlainString();
    }
}
