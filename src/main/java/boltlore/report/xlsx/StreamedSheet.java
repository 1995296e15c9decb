package boltlore.report.xlsx;

import boltlore.report.Cell;
import boltlore.report.Formula;
import boltlore.report.Printed;
import boltlore.report.Utf8;
import boltlore.report.xlsx.LaidPage.LaidCell;
import boltlore.report.xlsx.LaidPage.LaidRow;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * A worksheet of POI's whose rows are streamed into it when it is written: POI's own cells cost several times as much,
 * and its streaming ones hold their numbers as doubles. Results of formulas are the core's own decimals here.
 */
final class StreamedSheet extends XSSFSheet implements Cell.Cases<Utf8> {

    private static final String STARTS_FORMULA = "=+-@\t\r";
    private static final byte[] NO_ROWS = Utf8.encoded("<sheetData/>");
    private static final byte[] NO_MERGES = Utf8.encoded("<mergeCells/>");
    private static final byte[] STYLE = Utf8.encoded("\" s=\"");
    private static final byte[] EMPTY = Utf8.encoded("\"/>");
    private static final byte[] WORDS = Utf8.encoded("\" t=\"inlineStr\"><is>");
    private static final byte[] WORDS_END = Utf8.encoded("</is></c>");
    private static final byte[] TEXT = Utf8.encoded("<t>");
    private static final byte[] TEXT_AS_IT_IS = Utf8.encoded("<t xml:space=\"preserve\">");
    private static final byte[] TEXT_END = Utf8.encoded("</t>");
    private static final byte[] VALUE = Utf8.encoded("\"><v>");
    private static final byte[] VALUE_END = Utf8.encoded("</v></c>");

    /** A cell holds no more (a limit that Excel documents). */
    private static final int LONGEST_TEXT = 32_767;

    /** Day 0 of the usual date system; right from 1 March 1900, before which it counts a day that never was. */
    private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

    private static final LocalDate FIRST_SURE_DAY = LocalDate.of(1900, 3, 1);

    /** What XML 1.0 (section 2.2) allows nowhere, and the return, which it would read as a line's end. */
    private static final Pattern FORBIDDEN = Pattern.compile("[\\x00-\\x08\\x0B-\\x1F\\p{Cs}\uFFFE\uFFFF]");
    /** What reads like a spreadsheet's own escape of a character (ECMA-376 part 1, 22.9.2.19). */
    private static final Pattern ESCAPE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

    private final Utf8 rows = new Utf8(16 * 1024).append("<sheetData>");
    private final Utf8 merges = new Utf8(1024).append("<mergeCells>");
    private boolean merged;
    private String lead = "";
    private FormulaText.Here here = new FormulaText.Here(0, "", 0);
    private FormulaText formulas = new FormulaText(List.of(), List.of());

    /** Writes the rows down; merges the cells that stand across several columns. */
    void stream(LaidPage page, int number, CellStyles styles, FormulaText allFormulas) {
        formulas = allFormulas;
        byte[][] columns = new byte[page.grid().allColumns()][];
        for (int i = 0; i < columns.length; i++) {
            columns[i] = Utf8.encoded("<c r=\"" + FormulaText.column(i));
        }
        for (int row = 0; row < page.rows().size(); row++) {
            LaidRow laid = page.rows().get(row);
            here = new FormulaText.Here(number, laid.block(), row);
            rows.append("<row r=\"").append(row + 1).append("\" ht=\"");
            hundredths(laid.height()).append("\" customHeight=\"1\">");
            for (LaidCell cell : laid.cells()) {
                append(cell, row, columns, styles);
            }
            rows.append("</row>");
        }
        if (merged) {
            getCTWorksheet().addNewMergeCells();
        }
        setDimensionOverride(new CellRangeAddress(0, page.rows().size() - 1, 0, columns.length - 1));
    }

    private void append(LaidCell cell, int row, byte[][] columns, CellStyles styles) {
        lead = cell.lead();
        CellStyleKey own = cell.cell() instanceof Cell.Words words && lead.isEmpty() && startsFormula(words.text())
                ? cell.style().quote()
                : cell.style();
        begin(columns[cell.column()], row, styles.number(own));
        cell.cell().as(this);
        for (int i = 1; i < cell.span(); i++) {
            begin(columns[cell.column() + i], row, styles.number(cell.style()));
            empty();
        }
        if (cell.span() > 1) {
            String last = FormulaText.column(cell.column() + cell.span() - 1);
            merges.append("<mergeCell ref=\"")
                    .append(FormulaText.column(cell.column()))
                    .append(row + 1);
            merges.append(':').append(last).append(row + 1).append("\"/>");
            merged = true;
        }
    }

    private void begin(byte[] column, int row, int style) {
        rows.append(column).append(row + 1).append(STYLE).append(style);
    }

    private static boolean startsFormula(String text) {
        return !text.isEmpty() && STARTS_FORMULA.indexOf(text.charAt(0)) >= 0;
    }

    @Override
    public Utf8 empty() {
        return rows.append(EMPTY);
    }

    @Override
    public Utf8 words(String text) {
        rows.append(WORDS);
        if (lead.isEmpty()) {
            appendText(text);
        } else {
            appendRun("<b/>", lead);
            appendRun("", text);
        }
        return rows.append(WORDS_END);
    }

    private void appendRun(String weight, String text) {
        rows.append("<r><rPr>").append(weight).append("<sz val=\"").append(LookStyle.BODY_POINTS);
        rows.append("\"/><rFont val=\"").append(LookStyle.TYPEFACE).append("\"/></rPr>");
        appendText(text);
        rows.append("</r>");
    }

    private void appendText(String text) {
        String fitting = text.length() > LONGEST_TEXT ? text.substring(0, LONGEST_TEXT) : text;
        rows.append(mindsBlanks(fitting) ? TEXT_AS_IT_IS : TEXT)
                .append(escaped(fitting))
                .append(TEXT_END);
    }

    /** Whether blanks stand where an XML reader may drop them. */
    private static boolean mindsBlanks(String text) {
        return !text.isEmpty()
                && (text.charAt(0) <= ' ' || text.charAt(text.length() - 1) <= ' ' || text.indexOf('\n') >= 0);
    }

    @Override
    public Utf8 figure(BigDecimal value) {
        return rows.append(VALUE).append(Printed.data(value).toPlainString()).append(VALUE_END);
    }

    @Override
    public Utf8 day(LocalDate value) {
        return value.isBefore(FIRST_SURE_DAY)
                ? words(value.toString())
                : figure(BigDecimal.valueOf(ChronoUnit.DAYS.between(DAY_ZERO, value)));
    }

    @Override
    public Utf8 worked(Formula formula, BigDecimal result) {
        String text = formulas.append(new StringBuilder(), formula, here).toString();
        rows.append("\"><f>").append(escaped(text)).append("</f><v>");
        return rows.append(Printed.data(result).toPlainString()).append(VALUE_END);
    }

    /** Text for XML 1.0: markup escaped, and what it forbids replaced by U+FFFD. */
    private static String escaped(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' || c == '&' || c == '<' || c == '>' || c == '_' || c >= '\uD800') {
                String allowed = FORBIDDEN.matcher(text).replaceAll("\uFFFD");
                return ESCAPE.matcher(allowed)
                        .replaceAll("_x005F_")
                        .replace("&", "&amp;")
                        .replace("<", "&lt;")
                        .replace(">", "&gt;");
            }
        }
        return text;
    }

    /** With two decimals, which is finer than any printer. */
    private Utf8 hundredths(double value) {
        int hundredths = (int) Math.round(value * 100);
        rows.append(hundredths / 100).append('.');
        return rows.append(hundredths / 10 % 10).append(hundredths % 10);
    }

    @Override
    protected void write(OutputStream out) throws IOException {
        ByteArrayOutputStream template = new ByteArrayOutputStream(4 * 1024);
        super.write(template);
        byte[] xml = template.toByteArray();
        int from = fill(out, xml, 0, NO_ROWS, rows.append("</sheetData>"));
        from = merged ? fill(out, xml, from, NO_MERGES, merges.append("</mergeCells>")) : from;
        out.write(xml, from, xml.length - from);
    }

    /** Copies the template up to the gap and writes what belongs into that; says where the template goes on. */
    private static int fill(OutputStream out, byte[] xml, int from, byte[] gap, Utf8 content) throws IOException {
        int at = from;
        while (!Arrays.equals(xml, at, at + gap.length, gap, 0, gap.length)) {
            at++;
        }
        out.write(xml, from, at - from);
        content.writeTo(out);
        return at + gap.length;
    }
}
