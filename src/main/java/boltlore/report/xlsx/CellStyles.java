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

/** The cell styles of a workbook for pages in one language: one for each key that occurs. */
final class CellStyles {

    /** How number formats name a language (ECMA-376 part 1, 18.8.31), so that a sheet has its decimal sign anywhere. */
    private static final Map<String, String> LOCALES = Map.of("de", "[$-407]", "fr", "[$-40C]");

    private final XSSFWorkbook book;
    private final String locale;
    private final Map<CellStyleKey, XSSFCellStyle> styles = new HashMap<>();
    /** A table's cells share their keys, and asking for the same object again is much the quickest. */
    private final IdentityHashMap<CellStyleKey, Integer> seen = new IdentityHashMap<>();

    CellStyles(XSSFWorkbook book, String language) {
        this.book = book;
        this.locale = LOCALES.getOrDefault(language, "");
        // The font of cells that nothing is said about; column widths are counted in its figures.
        set(book.getFontAt(0), LookStyle.BODY_POINTS, false);
    }

    /** The number of the style of cells with that key. */
    int number(CellStyleKey key) {
        Integer number = seen.get(key);
        if (number == null) {
            number = (int) style(key).getIndex();
            seen.put(key, number);
        }
        return number;
    }

    /** Copied from the plain one of its look: POI compares each border that is set with all that there are. */
    private XSSFCellStyle style(CellStyleKey key) {
        XSSFCellStyle known = styles.get(key);
        if (known != null) {
            return known;
        }
        CellStyleKey plain = CellStyleKey.of(key.look());
        XSSFCellStyle style = key.equals(plain) ? plain(key) : copy(style(plain), key);
        if (!format(key).equals(plain.format())) {
            style.setDataFormat(book.createDataFormat().getFormat(format(key)));
        }
        if (key.quoted()) {
            style.setQuotePrefixed(true);
        }
        styles.put(key, style);
        return style;
    }

    private String format(CellStyleKey key) {
        return key.isNumber() ? locale + key.format() : key.format();
    }

    private XSSFCellStyle copy(XSSFCellStyle plain, CellStyleKey key) {
        XSSFCellStyle style = book.createCellStyle();
        style.cloneStyleFrom(plain);
        style.setAlignment(key.aligned());
        style.setIndention((short) (key.indented() ? 1 : 0));
        return style;
    }

    private XSSFCellStyle plain(CellStyleKey key) {
        LookStyle look = LookStyle.of(key.look());
        XSSFCellStyle style = book.createCellStyle();
        XSSFFont font = book.createFont();
        set(font, look.points(), look.bold());
        style.setFont(font);
        style.setAlignment(key.aligned());
        style.setIndention((short) (key.indented() ? 1 : 0));
        style.setVerticalAlignment(look.vertical());
        style.setWrapText(true);
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
        return style;
    }

    private static void set(XSSFFont font, int points, boolean bold) {
        font.setFontName(LookStyle.TYPEFACE);
        font.setFontHeightInPoints((short) points);
        font.setBold(bold);
        font.setScheme(FontScheme.NONE);
    }
}
