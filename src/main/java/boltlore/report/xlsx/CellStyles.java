package boltlore.report.xlsx;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.FontScheme;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The cell styles of a workbook: one for each key that occurs. */
final class CellStyles {

    private final XSSFWorkbook book;
    private final Map<CellStyleKey, Integer> styles = new HashMap<>();
    /** A table's cells share their keys, and asking for the same object again is much the quickest. */
    private final IdentityHashMap<CellStyleKey, Integer> seen = new IdentityHashMap<>();

    private final Map<Boolean, Map<Integer, XSSFFont>> fonts = Map.of(true, new HashMap<>(), false, new HashMap<>());

    CellStyles(XSSFWorkbook book) {
        this.book = book;
        // The font of cells that nothing is said about; column widths are counted in its figures.
        XSSFFont body = book.getFontAt(0);
        set(body, LookStyle.BODY_POINTS, false);
        fonts.get(false).put(LookStyle.BODY_POINTS, body);
    }

    /** The number of the style of cells with that key. */
    int number(CellStyleKey key) {
        Integer number = seen.get(key);
        if (number == null) {
            number = styles.computeIfAbsent(key, this::make);
            seen.put(key, number);
        }
        return number;
    }

    private int make(CellStyleKey key) {
        LookStyle look = LookStyle.of(key.look());
        XSSFCellStyle style = book.createCellStyle();
        style.setFont(fonts.get(look.bold()).computeIfAbsent(look.points(), points -> font(points, look.bold())));
        style.setDataFormat(book.createDataFormat().getFormat(key.format()));
        style.setAlignment(key.aligned());
        style.setVerticalAlignment(look.vertical());
        style.setIndention((short) (key.indented() ? 1 : 0));
        style.setWrapText(true);
        style.setQuotePrefixed(key.quoted());
        if (look.band()) {
            style.setFillForegroundColor(new XSSFColor(LookStyle.LIGHT_GREY));
            style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        }
        if (look.sides() != BorderStyle.NONE) {
            style.setBorderLeft(look.sides());
            style.setBorderRight(look.sides());
        }
        if (look.top() != BorderStyle.NONE) {
            style.setBorderTop(look.top());
        }
        if (look.bottom() != BorderStyle.NONE) {
            style.setBorderBottom(look.bottom());
        }
        return style.getIndex();
    }

    private XSSFFont font(int points, boolean bold) {
        XSSFFont font = book.createFont();
        set(font, points, bold);
        return font;
    }

    private static void set(XSSFFont font, int points, boolean bold) {
        font.setFontName(LookStyle.TYPEFACE);
        font.setFontHeightInPoints((short) points);
        font.setBold(bold);
        font.setScheme(FontScheme.NONE);
    }
}
