package boltlore.report.xlsx;

import boltlore.report.SheetFile;
import boltlore.report.Workbook;
import boltlore.report.WorkbookWriter;
import boltlore.report.drawing.Png;
import boltlore.report.xlsx.XlsxPackage.Part;
import boltlore.report.xlsx.XlsxPackage.PartKind;
import java.util.ArrayList;
import java.util.List;

/**
 * One file a workbook. Formulas are live and carry the core's own decimals as their results; text can never become a
 * formula; the same workbook gives the same bytes.
 */
public final class XlsxWriter implements WorkbookWriter {

    @Override
    public List<SheetFile> write(Workbook workbook) {
        return List.of(new SheetFile(workbook.file() + ".xlsx", bytes(workbook)));
    }

    private static byte[] bytes(Workbook workbook) {
        List<LaidPage> pages = workbook.pages().stream().map(PageLayout::of).toList();
        List<String> names = SheetNames.of(workbook.pages());
        FormulaText formulas = new FormulaText(new Addresses(pages, names));
        Styles styles = new Styles();
        SharedTexts texts = new SharedTexts();
        XlsxPackage parts = new XlsxPackage(workbook);
        Part book = parts.root(PartKind.WORKBOOK, "/xl/workbook.xml");
        List<String> relations = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            Part sheet = parts.under(book, PartKind.SHEET, "/xl/worksheets/sheet" + (i + 1) + ".xml");
            String drawing = drawing(parts, sheet, pages.get(i), names.get(i), i + 1);
            sheet.write(new SheetXml(pages.get(i), i, styles, texts, formulas).xml(drawing));
            relations.add(sheet.relation());
        }
        parts.under(book, PartKind.STYLES, "/xl/styles.xml").write(styles.xml());
        texts.writeTo(parts.under(book, PartKind.TEXTS, "/xl/sharedStrings.xml"));
        book.write(WorkbookXml.xml(pages, names, relations));
        return parts.toBytes();
    }

    /** The relation to the sheet's charts and pictures, or nothing where it has none. */
    private static String drawing(XlsxPackage parts, Part sheet, LaidPage page, String name, int number) {
        if (page.charts().isEmpty() && page.pictures().isEmpty()) {
            return "";
        }
        Part drawing = parts.under(sheet, PartKind.DRAWING, "/xl/drawings/drawing" + number + ".xml");
        List<String> relations = charts(parts, drawing, page, name, number);
        for (int i = 0; i < page.pictures().size(); i++) {
            String file = "/xl/media/image" + number + "-" + (i + 1) + ".png";
            Part image = parts.under(drawing, PartKind.IMAGE, file);
            image.write(Png.of(page.pictures().get(i).drawing()));
            relations.add(image.relation());
        }
        drawing.write(DrawingXml.xml(page, relations));
        return drawing.relation();
    }

    private static List<String> charts(XlsxPackage parts, Part drawing, LaidPage page, String name, int number) {
        List<String> relations = new ArrayList<>();
        for (LaidChart laid : page.charts()) {
            String chartName = "/xl/charts/chart" + number + "-" + (relations.size() + 1) + ".xml";
            Part chart = parts.under(drawing, PartKind.CHART, chartName);
            LaidTable table = page.table(laid.chart().table());
            chart.write(new ChartXml(laid.chart(), table, name).xml());
            relations.add(chart.relation());
        }
        return relations;
    }
}
