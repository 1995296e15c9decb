package boltlore.report.xlsx;

import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Particular;
import boltlore.report.Particulars;
import boltlore.report.PrintSetup;
import boltlore.report.Row;
import boltlore.report.xlsx.LaidPage.LaidTable;
import boltlore.report.xlsx.LaidPage.Rows;
import boltlore.report.xlsx.LaidPage.Spot;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintOrientation;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFPrintSetup;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCol;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCols;

/** All of a worksheet but its rows: how it prints, what stays in view, what can be filtered, entered and looked at. */
final class SheetWriter {

    /** Rows that stay in view may be this high, in points: 200 dots of a small screen's 800. */
    private static final double HIGHEST_FROZEN = 150;

    /** Columns that stay in view may be this wide, in characters of 7 dots: half of a small screen's 1280. */
    private static final double WIDEST_FROZEN = 90;

    /** Fewer rows are seen at a glance. */
    private static final int WORTH_A_FILTER = 6;

    private static final String SMALL = "&8 ";

    /** Programs shrink it with the page. */
    private static final String STRONG = "&B&10 ";

    /** 1 January 2000, as workbooks count days: no sheet of a kit was filled in before. */
    private static final String EARLIEST_DAY = "36526";

    private final XSSFWorkbook book;
    private final StreamedSheet sheet;
    private final LaidPage page;
    private final PageBreaks breaks;
    private final WorkbookNames names;

    SheetWriter(XSSFWorkbook book, StreamedSheet sheet, LaidPage.Paged paged, WorkbookNames names) {
        this.book = book;
        this.sheet = sheet;
        this.page = paged.page();
        this.breaks = paged.breaks();
        this.names = names;
    }

    void write() {
        CTCols columns = sheet.getCTWorksheet().getColsArray(0);
        for (int i = 0; i < page.grid().allColumns(); i++) {
            CTCol column = columns.addNewCol();
            column.setMin(i + 1);
            column.setMax(i + 1);
            column.setWidth(Math.round(page.grid().width(i) * 100) / 100.0);
            column.setCustomWidth(true);
        }
        sheet.setDefaultRowHeightInPoints((float) LookStyle.lineHeight());
        sheet.setDisplayGridlines(false);
        freeze();
        print(page.page().print());
        page.tables().values().forEach(this::table);
        page.page().particulars().forEach(this::names);
        validate();
        new DrawingWriter(book, sheet, page).write();
    }

    private void freeze() {
        LaidTable main = page.main().orElse(null);
        if (main == null) {
            return;
        }
        double height = page.rows().subList(0, main.firstRow()).stream()
                .mapToDouble(LaidPage.LaidRow::height)
                .sum();
        int columns = Math.min(
                page.page().print().frozenColumns(), main.table().columns().size() - 1);
        while (columns > 0 && page.grid().width(0, main.spans().start(columns)) > WIDEST_FROZEN) {
            columns--;
        }
        sheet.createFreezePane(
                columns <= 0 ? 0 : main.spans().start(columns), height <= HIGHEST_FROZEN ? main.firstRow() : 0);
    }

    private void print(PrintSetup print) {
        sheet.setMargin(PageMargin.LEFT, PageBreaks.LEFT);
        sheet.setMargin(PageMargin.RIGHT, PageBreaks.RIGHT);
        sheet.setMargin(PageMargin.TOP, PageBreaks.TOP);
        sheet.setMargin(PageMargin.BOTTOM, PageBreaks.BOTTOM);
        sheet.setMargin(PageMargin.HEADER, 0.25);
        sheet.setMargin(PageMargin.FOOTER, 0.3);
        sheet.setFitToPage(true);
        XSSFPrintSetup setup = sheet.getPrintSetup();
        setup.setPaperSize(XSSFPrintSetup.A4_PAPERSIZE);
        setup.setFitWidth((short) 1);
        setup.setFitHeight((short) 0);
        setup.setOrientation(print.landscape() ? PrintOrientation.LANDSCAPE : PrintOrientation.PORTRAIT);
        if (!print.header().isEmpty()) {
            sheet.getHeader().setLeft(STRONG + line(print.header()));
        }
        if (!print.footer().isEmpty()) {
            sheet.getFooter().setLeft(SMALL + line(print.footer()));
        }
        sheet.getFooter()
                .setRight(SMALL + line(print.count().before()) + "&P"
                        + line(print.count().between()) + "&N");
        book.setPrintArea(book.getSheetIndex(sheet), 0, page.grid().columns() - 1, 0, page.printedRows() - 1);
        breaks.after().forEach(sheet::setRowBreak);
        breaks.repeated().ifPresent(table -> {
            int heading = table.firstRow() - 1;
            sheet.setRepeatingRows(new CellRangeAddress(heading, heading, -1, -1));
        });
    }

    private static String line(String text) {
        String fitting = text.length() > PrintSetup.LONGEST_LINE ? text.substring(0, PrintSetup.LONGEST_LINE) : text;
        return fitting.replace("&", "&&");
    }

    /**
     * A plain table is one to the spreadsheet program too: it has a name, and filters where it is long. Group and
     * sub-total rows have no place in such a table, nor have cells across several columns; the long main table of a page
     * can be filtered all the same.
     */
    private void table(LaidTable laid) {
        List<String> headings =
                laid.table().columns().stream().map(Column::headingWithUnit).toList();
        int last = laid.spans().start(headings.size()) - 1;
        CellRangeAddress area = new CellRangeAddress(laid.firstRow() - 1, laid.lastRow(), 0, last);
        boolean worthFilter = laid.table().rows().size() >= WORTH_A_FILTER;
        if (isTable(laid, headings)) {
            XSSFTable table = sheet.createTable(new AreaReference(area.formatAsString(), SpreadsheetVersion.EXCEL2007));
            String name = names.table(page.page(), laid.table());
            table.setName(name);
            table.setDisplayName(name);
            for (int i = 0; i < headings.size(); i++) {
                table.getColumns().get(i).setName(headings.get(i));
            }
            if (worthFilter) {
                table.getCTTable().addNewAutoFilter().setRef(area.formatAsString());
            }
        } else if (worthFilter && laid.spans().areSingle() && laid.table().id().equals(page.mainTable())) {
            List<Rows> plain = laid.rows(Row::isPlain);
            area.setLastRow(
                    plain.isEmpty()
                            ? laid.lastRow()
                            : plain.get(plain.size() - 1).last());
            // POI's own way adds a hidden name, and a sheet for a customer hides nothing.
            sheet.getCTWorksheet().addNewAutoFilter().setRef(area.formatAsString());
        }
    }

    private static boolean isTable(LaidTable laid, List<String> headings) {
        long distinct = headings.stream()
                .map(heading -> heading.toLowerCase(Locale.ROOT))
                .filter(heading -> !heading.isBlank() && heading.strip().equals(heading) && !heading.contains("\n"))
                .distinct()
                .count();
        return laid.table().isPlain()
                && !laid.table().rows().isEmpty()
                && laid.spans().areSingle()
                && distinct == headings.size();
    }

    /** Numbers that stand alone can be called by their names in formulas of one's own. */
    private void names(Particulars block) {
        for (Particular entry : block.entries()) {
            if (entry.cell() instanceof Cell.Figure || entry.cell() instanceof Cell.Worked) {
                Spot spot = page.spot(block.name(), entry.key());
                XSSFName name = book.createName();
                name.setNameName(names.value(page.page(), block, entry));
                name.setRefersToFormula(FormulaText.onSheet(sheet.getSheetName())
                        + new CellReference(spot.row(), spot.column(), true, true).formatAsString());
            }
        }
    }

    /** Boxes with a closed set of answers offer them, boxes for a date want one; a program asks before it takes another. */
    private void validate() {
        Map<Kind.Entry, CellRangeAddressList> boxes = new LinkedHashMap<>();
        for (LaidTable laid : page.tables().values()) {
            for (Column column : laid.table().columns()) {
                if (column.kind().entry().isGuided()) {
                    for (Rows rows : laid.rows(Row::isPlain)) {
                        box(boxes, column.kind(), laid.column(column.key()), rows);
                    }
                }
            }
        }
        page.page()
                .particulars()
                .forEach(block -> block.entries().forEach(entry -> {
                    Spot spot = page.spot(block.name(), entry.key());
                    box(boxes, entry.kind(), spot.column(), new Rows(spot.row(), spot.row()));
                }));
        page.dates().forEach(date -> box(boxes, Kind.blank().day(), date.column(), new Rows(date.row(), date.row())));
        DataValidationHelper helper = sheet.getDataValidationHelper();
        boxes.forEach((entry, areas) -> {
            DataValidationConstraint constraint = entry.day()
                    ? helper.createDateConstraint(OperatorType.GREATER_OR_EQUAL, EARLIEST_DAY, null, null)
                    : helper.createExplicitListConstraint(entry.answers().toArray(String[]::new));
            DataValidation validation = helper.createValidation(constraint, areas);
            validation.setErrorStyle(DataValidation.ErrorStyle.WARNING);
            validation.setShowErrorBox(true);
            sheet.addValidationData(validation);
        });
    }

    private static void box(Map<Kind.Entry, CellRangeAddressList> boxes, Kind kind, int column, Rows rows) {
        if (kind.entry().isGuided()) {
            boxes.computeIfAbsent(kind.entry(), none -> new CellRangeAddressList())
                    .addCellRangeAddress(rows.first(), column, rows.last(), column);
        }
    }
}
