package boltlore.report.xlsx;

import boltlore.report.Kind;
import boltlore.report.Look;
import boltlore.report.Printed;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.apache.poi.ss.usermodel.HorizontalAlignment;

/**
 * All that decides how a cell is set; one cell style is made for each that occurs.
 *
 * @param indented a little away from the left edge: from a rule, or from what stands before it
 * @param format of numbers, as ECMA-376 part 1, 18.8.31 writes it
 * @param isNumber whether it is a number that people of another language write in another way
 * @param quoted whether the text would be taken for a formula if someone edited it, and so is marked as text
 */
record CellStyleKey(
        Look look, HorizontalAlignment aligned, boolean indented, String format, boolean isNumber, boolean quoted) {

    private static final String GENERAL = "General";
    private static final String DATE = "yyyy\\-mm\\-dd";

    private static final Map<Look, CellStyleKey> PLAIN = new EnumMap<>(Look.class);

    static {
        for (Look look : Look.values()) {
            boolean indented = look == Look.NOTE || look == Look.CAUTION;
            PLAIN.put(look, new CellStyleKey(look, HorizontalAlignment.LEFT, indented, GENERAL, false, false));
        }
    }

    /** Always the same for the same look. */
    static CellStyleKey of(Look look) {
        return Objects.requireNonNull(PLAIN.get(look));
    }

    /** Under a heading that says the unit; a blank as wide as a point keeps figures clear of a rule at their right. */
    static CellStyleKey inColumn(Look look, Kind kind) {
        Look shown = kind.form().isByHand() && look == Look.PLAIN ? Look.HANDWRITTEN : look;
        String plain = look == Look.COLUMN_HEADING ? GENERAL : format(kind);
        String format = plain.equals(GENERAL) || !kind.form().isNumber() ? plain : plain + "_.";
        boolean box = kind.form().isByHand() && kind.form() != Kind.Form.TICK;
        return new CellStyleKey(
                shown, aligned(kind), box, format, kind.form().isNumber() && look != Look.COLUMN_HEADING, false);
    }

    /** Where nothing else says the unit. */
    static CellStyleKey alone(Kind kind) {
        Look look = kind.form().isByHand() ? Look.HANDWRITTEN : Look.VALUE;
        String unit = Printed.unit(kind);
        String format = unit.isEmpty() ? format(kind) : format(kind) + "\"" + unit + "\"";
        return new CellStyleKey(
                look, HorizontalAlignment.LEFT, false, format, kind.form().isNumber(), false);
    }

    /** A line or box for a date, which reads as the other dates do. */
    static CellStyleKey dateToWrite(Look look) {
        return new CellStyleKey(look, HorizontalAlignment.LEFT, false, DATE, false, false);
    }

    CellStyleKey indent() {
        boolean left = aligned == HorizontalAlignment.LEFT;
        return left && !indented ? new CellStyleKey(look, aligned, true, format, isNumber, quoted) : this;
    }

    CellStyleKey quote() {
        return new CellStyleKey(look, aligned, indented, format, isNumber, true);
    }

    private static HorizontalAlignment aligned(Kind kind) {
        return kind.form() == Kind.Form.TICK
                ? HorizontalAlignment.CENTER
                : kind.form().isNumber() ? HorizontalAlignment.RIGHT : HorizontalAlignment.LEFT;
    }

    private static String format(Kind kind) {
        String decimals = kind.scale() == 0 ? "" : "." + "0".repeat(kind.scale());
        return switch (kind.form()) {
            case DATE -> DATE;
            case WHOLE -> "0";
            case DECIMAL, PERCENT -> "0" + decimals;
            case MONEY -> "#,##0" + decimals;
            case BLANK -> kind.entry().day() ? DATE : GENERAL;
            case TEXT, QUANTITY, CODE, TICK, SIGNATURE -> GENERAL;
        };
    }
}
