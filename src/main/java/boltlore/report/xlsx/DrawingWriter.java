package boltlore.report.xlsx;

import boltlore.report.Row;
import boltlore.report.drawing.Png;
import boltlore.report.xlsx.LaidPage.LaidChart;
import boltlore.report.xlsx.LaidPage.LaidCode;
import boltlore.report.xlsx.LaidPage.LaidPicture;
import boltlore.report.xlsx.LaidPage.LaidTable;
import boltlore.report.xlsx.LaidPage.Spot;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.ClientAnchor.AnchorType;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The charts and pictures of a worksheet, held by its cells, so that they are never wider than its columns print. */
record DrawingWriter(XSSFWorkbook book, XSSFSheet sheet, LaidPage page) {

    /** In points: a picture that begins on a page's very edge is printed on the page before as well, where nobody sees it. */
    static final double CLEAR_OF_BREAK = 0.75;

    /** How large the box of a remark is that opens beside its cell. */
    private static final int REMARK_COLUMNS = 3;

    private static final int REMARK_ROWS = 3;
    private static final int REMARK_CHARACTERS = 30;

    void write() {
        page.charts().forEach(this::chart);
        page.pictures().forEach(this::picture);
        page.tables().values().forEach(this::remarks);
        Map<String, Integer> numbers = new HashMap<>();
        page.codes()
                .forEach(code -> code(
                        code,
                        numbers.computeIfAbsent(
                                code.text(), text -> book.addPicture(Png.code(text), Workbook.PICTURE_TYPE_PNG))));
    }

    private void remarks(LaidTable laid) {
        List<Row> rows = laid.table().rows();
        for (int i = 0; i < rows.size(); i++) {
            int row = laid.firstRow() + i;
            rows.get(i).remarks().forEach((column, text) -> remark(laid.column(column), row, text));
        }
    }

    private void remark(int column, int row, String text) {
        int high = REMARK_ROWS + text.length() / REMARK_CHARACTERS;
        XSSFComment remark = sheet.createDrawingPatriarch()
                .createCellComment(
                        new XSSFClientAnchor(0, 0, 0, 0, column + 1, row, column + 1 + REMARK_COLUMNS, row + high));
        remark.setAddress(row, column);
        remark.setString(text);
    }

    /** In the middle of its row, at the left of its cell. */
    private void code(LaidCode laid, int number) {
        Spot spot = laid.spot();
        double above = Math.max(0, (page.rows().get(spot.row()).height() - LookStyle.CODE) / 2);
        XSSFClientAnchor anchor = new XSSFClientAnchor(
                Units.toEMU(CLEAR_OF_BREAK),
                Units.toEMU(above),
                Units.toEMU(CLEAR_OF_BREAK + LookStyle.CODE),
                Units.toEMU(above + LookStyle.CODE),
                spot.column(),
                spot.row(),
                spot.column(),
                spot.row());
        anchor.setAnchorType(AnchorType.MOVE_DONT_RESIZE);
        described(sheet.createDrawingPatriarch().createPicture(anchor, number), laid.text());
    }

    private void chart(LaidChart laid) {
        XSSFClientAnchor anchor =
                anchor(laid.from(), laid.rows().first(), laid.to(), laid.rows().last() + 1, 0);
        ChartWriter.write(
                sheet.createDrawingPatriarch().createChart(anchor),
                laid,
                page.table(laid.chart().table()),
                sheet);
    }

    private void picture(LaidPicture laid) {
        int number = book.addPicture(Png.encode(laid.drawing()), Workbook.PICTURE_TYPE_PNG);
        double right = laid.width() / PageLayout.POINTS_PER_CHARACTER;
        XSSFClientAnchor anchor = anchor(0, laid.row(), right, laid.row(), CLEAR_OF_BREAK + laid.height());
        anchor.setDy1(Units.toEMU(CLEAR_OF_BREAK));
        described(
                sheet.createDrawingPatriarch().createPicture(anchor, number),
                laid.drawing().says());
    }

    private static void described(XSSFPicture picture, String says) {
        var properties = picture.getCTPicture().getNvPicPr().getCNvPr();
        properties.setName("Picture " + properties.getId());
        properties.setDescr(says);
    }

    /** @param left and right in characters from the left edge of the grid, and points below the last row's top */
    private XSSFClientAnchor anchor(double left, int firstRow, double right, int lastRow, double below) {
        XSSFClientAnchor anchor = new XSSFClientAnchor();
        anchor.setAnchorType(AnchorType.MOVE_DONT_RESIZE);
        anchor.setRow1(firstRow);
        anchor.setRow2(lastRow);
        anchor.setDy2(Units.toEMU(below));
        anchor.setCol1(column(left));
        anchor.setDx1(within(left));
        anchor.setCol2(column(right));
        anchor.setDx2(within(right));
        return anchor;
    }

    private int column(double at) {
        int column = 0;
        while (column < page.grid().columns() - 1 && at > page.grid().width(0, column + 1)) {
            column++;
        }
        return column;
    }

    /** How far into its column, which it does not leave. */
    private int within(double at) {
        int column = column(at);
        double into = Math.min(at - page.grid().width(0, column), page.grid().width(column));
        return Units.toEMU(into * PageLayout.POINTS_PER_CHARACTER);
    }
}
