package boltlore.report.xlsx;

import boltlore.report.xlsx.PaperPage.Word;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** The rows of a worksheet, each found again on the paper that it is printed on. */
final class SheetOnPaper {

    private enum Kind {
        TITLE,
        HEADING,
        COLUMN_HEADING,
        GROUP,
        TABLE,
        SIGNATURE,
        OTHER
    }

    /** A row that holds words, and the sheet of paper that it was found on, from 0; -1 where it was not. */
    private record Found(int row, Kind kind, List<String> tokens, int page) {}

    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final double BOX_HIGH = 9;
    private static final double BOX_WIDE = 12;
    private static final double SERIAL_WIDE = 40;
    private static final double FULL_TYPE = LookStyle.BODY_POINTS;

    private final String name;
    private final XSSFSheet sheet;
    private final List<PaperPage> pages;
    private final int lastColumn;
    private final int lastRow;
    private final List<Map<String, Integer>> left = new ArrayList<>();
    private final List<Found> rows = new ArrayList<>();
    private final List<String> offences = new ArrayList<>();

    SheetOnPaper(String name, XSSFSheet sheet, List<PaperPage> pages) {
        this.name = name;
        this.sheet = sheet;
        this.pages = pages;
        String area = sheet.getWorkbook().getPrintArea(sheet.getWorkbook().getSheetIndex(sheet));
        AreaReference printed = new AreaReference(area, SpreadsheetVersion.EXCEL2007);
        this.lastColumn = printed.getLastCell().getCol();
        this.lastRow = printed.getLastCell().getRow();
        for (PaperPage page : pages) {
            Map<String, Integer> tokens = new HashMap<>();
            page.words().forEach(word -> {
                tokens.merge(word.text(), 1, Integer::sum);
                pieces(word.text()).forEach(piece -> tokens.merge(piece, 1, Integer::sum));
            });
            left.add(tokens);
        }
    }

    List<String> offences() {
        PrintedLaw.ofPaper(pages).forEach(this::offence);
        find();
        headings();
        signatures();
        boxes();
        return offences;
    }

    private void offence(String what) {
        offences.add(name + ", " + what);
    }

    private void find() {
        int page = 0;
        for (Row row : sheet) {
            List<String> tokens = tokens(row);
            if (tokens.isEmpty() || row.getRowNum() > lastRow) {
                continue;
            }
            int on = page;
            while (on < pages.size() && !holds(left.get(on), tokens)) {
                on++;
            }
            if (on == pages.size()) {
                offence("row " + (row.getRowNum() + 1) + " is not printed as it stands: " + missing(page, tokens));
                rows.add(new Found(row.getRowNum(), kind(row), tokens, -1));
                continue;
            }
            Map<String, Integer> from = left.get(on);
            tokens.forEach(token -> from.merge(token, -1, Integer::sum));
            rows.add(new Found(row.getRowNum(), kind(row), tokens, on));
            page = on;
        }
    }

    private String missing(int page, List<String> tokens) {
        Map<String, Integer> seen = new HashMap<>();
        for (int i = page; i < Math.min(page + 2, pages.size()); i++) {
            left.get(i).forEach((token, count) -> seen.merge(token, count, Integer::sum));
        }
        return String.join(
                " ",
                tokens.stream()
                        .filter(token -> seen.merge(token, -1, Integer::sum) < 0)
                        .toList());
    }

    private static boolean holds(Map<String, Integer> on, List<String> tokens) {
        Map<String, Integer> needed = new HashMap<>();
        tokens.forEach(token -> needed.merge(token, 1, Integer::sum));
        return needed.entrySet().stream().allMatch(each -> on.getOrDefault(each.getKey(), 0) >= each.getValue());
    }

    /** Words of the row's texts; a number's look depends on the program's language. */
    private List<String> tokens(Row row) {
        List<String> tokens = new ArrayList<>();
        for (Cell cell : row) {
            if (cell.getCellType() == CellType.STRING && cell.getColumnIndex() <= lastColumn) {
                tokens.addAll(tokens(cell.getStringCellValue()));
            }
        }
        return tokens;
    }

    /** A word of letters, and any word beside others, may go on in the next line after its hyphens; a mark may not. */
    static List<String> tokens(String text) {
        List<String> words = Arrays.stream(text.split("[\\s\\u00A0]+"))
                .filter(word -> !word.isEmpty())
                .toList();
        return words.stream()
                .flatMap(word -> word.matches(".*[-/].*") && mayBreak(words, word) ? pieces(word) : Stream.of(word))
                .toList();
    }

    private static boolean mayBreak(List<String> words, String word) {
        return words.size() > 1 || word.matches("[^0-9]*[a-z-]{3}[^0-9]*");
    }

    private static Stream<String> pieces(String word) {
        return Arrays.stream(word.split("(?<=[-/])")).map(piece -> "~" + piece);
    }

    private static Kind kind(Row row) {
        for (Cell cell : row) {
            XSSFCellStyle style = (XSSFCellStyle) cell.getCellStyle();
            short points = style.getFont().getFontHeightInPoints();
            if (points > 12) {
                return Kind.TITLE;
            }
            if (points > FULL_TYPE) {
                return Kind.HEADING;
            }
            BorderStyle top = style.getBorderTop();
            BorderStyle bottom = style.getBorderBottom();
            if (top == BorderStyle.MEDIUM
                    && bottom == BorderStyle.MEDIUM
                    && style.getFont().getBold()) {
                return Kind.COLUMN_HEADING;
            }
            if (style.getFillPattern() == FillPatternType.SOLID_FOREGROUND) {
                return Kind.GROUP;
            }
            boolean bold = style.getFont().getBold();
            if ((top == BorderStyle.NONE && bottom == BorderStyle.HAIR && !bold)
                    || bottom == BorderStyle.DOUBLE
                    || (top == BorderStyle.THIN && bottom == BorderStyle.THIN && bold)) {
                return Kind.TABLE;
            }
            if (bottom == BorderStyle.THIN && style.getBorderLeft() == BorderStyle.NONE) {
                return Kind.SIGNATURE;
            }
        }
        return Kind.OTHER;
    }

    private void headings() {
        Map<Integer, Found> shown = new TreeMap<>();
        for (int i = 0; i < rows.size(); i++) {
            Found row = rows.get(i);
            boolean leads = row.kind() == Kind.TITLE
                    || row.kind() == Kind.HEADING
                    || row.kind() == Kind.COLUMN_HEADING
                    || row.kind() == Kind.GROUP;
            boolean over = i + 1 < rows.size() && rows.get(i + 1).page() > row.page() && !pictured(i);
            if (leads && over && row.page() >= 0) {
                offence("page " + (row.page() + 1) + ": heading at the foot: " + String.join(" ", row.tokens()));
            }
            if (row.kind() == Kind.COLUMN_HEADING) {
                shown.clear();
                shown.put(row.page(), row);
            }
            repeated(row, shown);
        }
        strayHeadings();
    }

    /** Whether a picture, which holds no words, stands between the row and the next. */
    private boolean pictured(int i) {
        return rows.get(i + 1).row() - rows.get(i).row() > 2;
    }

    /** That the headings of a row's table stand on its sheet of paper, too. */
    private void repeated(Found row, Map<Integer, Found> shown) {
        boolean ofTable = row.kind() == Kind.TABLE || row.kind() == Kind.GROUP;
        if (!ofTable || shown.isEmpty() || row.page() < 0 || shown.containsKey(row.page())) {
            return;
        }
        Found heading = shown.values().iterator().next();
        shown.put(row.page(), heading);
        if (holds(left.get(row.page()), heading.tokens())) {
            heading.tokens().forEach(token -> left.get(row.page()).merge(token, -1, Integer::sum));
        } else {
            offence("page " + (row.page() + 1) + ": rows without headings, from: " + String.join(" ", row.tokens()));
        }
    }

    private void strayHeadings() {
        Set<List<String>> seen = new HashSet<>();
        for (Found row : rows) {
            if (row.kind() == Kind.COLUMN_HEADING && row.tokens().size() > 1 && seen.add(row.tokens())) {
                for (int page = 0; page < pages.size(); page++) {
                    if (holds(left.get(page), row.tokens())) {
                        offence("page " + (page + 1) + ": headings of another table: "
                                + String.join(" ", row.tokens()));
                    }
                }
            }
        }
    }

    private void signatures() {
        for (int page = 0; page < pages.size(); page++) {
            int on = page;
            List<Found> here = rows.stream().filter(row -> row.page() == on).toList();
            if (!here.isEmpty()
                    && here.stream().anyMatch(row -> row.kind() == Kind.SIGNATURE)
                    && here.stream().allMatch(row -> row.kind() == Kind.SIGNATURE || row.kind() == Kind.HEADING)) {
                offence("page " + (page + 1) + ": signatures alone");
            }
        }
    }

    /** Boxes for the pen: high and wide enough. */
    private void boxes() {
        double shrunk = pages.stream()
                        .flatMap(page -> page.words().stream())
                        .mapToDouble(Word::size)
                        .filter(size -> size <= FULL_TYPE + 0.1)
                        .max()
                        .orElse(FULL_TYPE)
                / FULL_TYPE;
        Set<String> said = new HashSet<>();
        List<String> titles = new ArrayList<>();
        for (Row row : sheet) {
            if (kind(row) == Kind.COLUMN_HEADING) {
                titles.clear();
                row.forEach(cell -> put(titles, cell));
            }
            for (Cell cell : row) {
                XSSFCellStyle style = (XSSFCellStyle) cell.getCellStyle();
                boolean box = cell.getColumnIndex() <= lastColumn
                        && cell.getRowIndex() <= lastRow
                        && style.getBorderLeft() == BorderStyle.THIN
                        && style.getBorderTop() == BorderStyle.THIN
                        && cell.getCellType() == CellType.BLANK
                        && !isCovered(cell)
                        && !isTick(cell);
                if (box) {
                    box(cell, shrunk, titles, said);
                }
            }
        }
    }

    private static void put(List<String> titles, Cell cell) {
        while (titles.size() <= cell.getColumnIndex()) {
            titles.add("");
        }
        titles.set(cell.getColumnIndex(), cell.toString());
    }

    private void box(Cell cell, double shrunk, List<String> titles, Set<String> said) {
        String title = cell.getColumnIndex() < titles.size() ? titles.get(cell.getColumnIndex()) : "";
        double high = cell.getRow().getHeightInPoints() * shrunk / POINTS_PER_MM;
        double wide = 0;
        CellRangeAddress area = area(cell);
        for (int i = area.getFirstColumn(); i <= area.getLastColumn(); i++) {
            wide += sheet.getColumnWidth(i) / 256.0 * PageLayout.POINTS_PER_CHARACTER * shrunk / POINTS_PER_MM;
        }
        double needed = title.matches("(?i).*seri(al|en|e ).*") ? SERIAL_WIDE : BOX_WIDE;
        String row = "row " + (cell.getRowIndex() + 1) + ": box '" + title + "' ";
        if (high < BOX_HIGH - 0.1 && said.add(title + "high")) {
            offence(row + "%.1f mm high".formatted(high));
        }
        if (wide < needed - 0.1 && said.add(title + "wide")) {
            offence(row + "%.0f mm wide, needs %.0f".formatted(wide, needed));
        }
    }

    private CellRangeAddress area(Cell cell) {
        return sheet.getMergedRegions().stream()
                .filter(region -> region.isInRange(cell))
                .findFirst()
                .orElse(new CellRangeAddress(
                        cell.getRowIndex(), cell.getRowIndex(), cell.getColumnIndex(), cell.getColumnIndex()));
    }

    private boolean isCovered(Cell cell) {
        CellRangeAddress area = area(cell);
        return area.getFirstColumn() != cell.getColumnIndex() || area.getFirstRow() != cell.getRowIndex();
    }

    private boolean isTick(Cell cell) {
        for (DataValidation validation : sheet.getDataValidations()) {
            String[] answers = validation.getValidationConstraint().getExplicitListValues();
            if (answers != null && answers.length == 1) {
                for (CellRangeAddress area : validation.getRegions().getCellRangeAddresses()) {
                    if (area.isInRange(cell)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }
}
