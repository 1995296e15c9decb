package boltlore.report.xlsx;

import boltlore.grid.GridCell;
import boltlore.grid.Sheet;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.NumberToTextConverter;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;

/** One sheet of a workbook as plain cells. */
final class SheetReader {

    /** A reference into another file: '[1]Sheet1'!A1, or a command to another program. */
    private static final Pattern ELSEWHERE = Pattern.compile("\\[[^\\]]+\\]|\\||(?i:DDE)");

    /** Names of columns in tables stand in brackets as well, and stay within the file. */
    private static final Pattern TABLE_COLUMN = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_.]*\\[.*\\]");

    private static final String NAME_OF_FILTER = "_FilterDatabase";
    private static final int MOST_COLUMNS = 2_000;

    private final Workbook workbook;
    private final org.apache.poi.ss.usermodel.Sheet sheet;
    private final int index;

    SheetReader(Workbook workbook, int index) {
        this.workbook = workbook;
        this.sheet = workbook.getSheetAt(index);
        this.index = index;
    }

    Sheet read() {
        List<Sheet.Line> lines = new ArrayList<>();
        for (Row row : sheet) {
            List<GridCell> cells = new ArrayList<>();
            for (Cell cell : row) {
                GridCell read = cell(cell);
                if (!read.isEmpty() && cell.getColumnIndex() < MOST_COLUMNS) {
                    while (cells.size() < cell.getColumnIndex()) {
                        cells.add(GridCell.EMPTY);
                    }
                    cells.add(read);
                }
            }
            lines.add(new Sheet.Line(row.getRowNum() + 1, row.getZeroHeight(), cells));
        }
        List<Sheet.Merged> merged =
                sheet.getMergedRegions().stream().map(SheetReader::merged).toList();
        boolean hidden = workbook.getSheetVisibility(index) != SheetVisibility.VISIBLE;
        return Sheet.of(sheet.getSheetName(), hidden, isFiltered(), lines, merged);
    }

    private static Sheet.Merged merged(CellRangeAddress range) {
        return new Sheet.Merged(
                range.getFirstRow() + 1, range.getFirstColumn(), range.getLastRow() + 1, range.getLastColumn());
    }

    private boolean isFiltered() {
        if (sheet instanceof XSSFSheet modern && modern.getCTWorksheet().isSetAutoFilter()) {
            return true;
        }
        return workbook.getAllNames().stream()
                .filter(name -> name.getSheetIndex() == index)
                .map(Name::getNameName)
                .anyMatch(name -> name.contains(NAME_OF_FILTER));
    }

    private GridCell cell(Cell cell) {
        boolean formula = cell.getCellType() == CellType.FORMULA;
        if (formula && isElsewhere(cell)) {
            return GridCell.unread("a value from another file");
        }
        CellType type = formula ? cell.getCachedFormulaResultType() : cell.getCellType();
        if (formula && cell instanceof XSSFCell modern && !isSaved(modern.getCTCell(), type)) {
            return GridCell.unread("a formula whose result was not saved");
        }
        return switch (type) {
            case NUMERIC -> number(cell, formula);
            case STRING -> GridCell.text(cell.getRichStringCellValue().getString(), face(cell));
            case BOOLEAN -> GridCell.text(cell.getBooleanCellValue() ? "yes" : "no", face(cell));
            case ERROR ->
                GridCell.unread("the error "
                        + FormulaError.forInt(cell.getErrorCellValue()).getString());
            default -> GridCell.EMPTY;
        };
    }

    /** An empty text is a result; where a number should be, nothing was worked out, and the library makes 0 of that. */
    private static boolean isSaved(CTCell cell, CellType type) {
        return cell.isSetV() && (type == CellType.STRING || !cell.getV().isBlank());
    }

    private static boolean isElsewhere(Cell cell) {
        try {
            String formula = cell.getCellFormula();
            return ELSEWHERE
                    .matcher(TABLE_COLUMN.matcher(formula).replaceAll(""))
                    .find();
        } catch (RuntimeException unreadable) {
            // Formulas of newer programs, which the library cannot spell out: their saved result counts.
            return false;
        }
    }

    private GridCell number(Cell cell, boolean formula) {
        double value = cell.getNumericCellValue();
        CellStyle style = cell.getCellStyle();
        String format = Objects.requireNonNullElse(style.getDataFormatString(), BuiltinFormats.getBuiltinFormat(0));
        if (DateUtil.isADateFormat(style.getDataFormat(), format) && DateUtil.isValidExcelDate(value)) {
            LocalDateTime day = cell.getLocalDateTimeCellValue();
            return new GridCell(GridCell.Kind.DATE, day.toLocalDate().toString(), null, formula, format, face(cell));
        }
        if (!Double.isFinite(value)) {
            return GridCell.unread("a number beyond all bounds");
        }
        BigDecimal number = new BigDecimal(NumberToTextConverter.toText(value)).stripTrailingZeros();
        return new GridCell(GridCell.Kind.NUMBER, shown(number, format), number, formula, format, face(cell));
    }

    /** A format of nothing but noughts shows as many digits at least: numbers of parts begin with them (ECMA-376 18.8.31). */
    private static String shown(BigDecimal number, String format) {
        boolean padded = format.matches("0{2,}") && number.scale() <= 0 && number.signum() >= 0;
        String digits = number.toPlainString();
        return padded ? "0".repeat(Math.max(0, format.length() - digits.length())) + digits : digits;
    }

    private GridCell.Face face(Cell cell) {
        Font font = workbook.getFontAt(cell.getCellStyle().getFontIndex());
        return font.getBold() || font.getStrikeout()
                ? new GridCell.Face(font.getBold(), font.getStrikeout())
                : GridCell.Face.PLAIN;
    }
}
