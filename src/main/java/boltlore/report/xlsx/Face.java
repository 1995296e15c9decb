package boltlore.report.xlsx;

import boltlore.report.Kind;
import boltlore.report.Look;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * All that decides how a cell is set; one cell style is made for each that occurs.
 *
 * @param set where its text stands
 * @param quoted whether the text would be taken for a formula if someone edited it, and so is marked as text
 */
record Face(Look look, Set set, String format, boolean quoted) {

    enum Set {
        LEFT,
        /** A little away from the left edge: from a rule, or from what stands before it. */
        INDENTED,
        RIGHT,
        CENTER
    }

    private static final Map<Look, Face> PLAIN = new EnumMap<>(Look.class);

    static {
        for (Look look : Look.values()) {
            Set set = look == Look.NOTE || look == Look.CAUTION ? Set.INDENTED : Set.LEFT;
            PLAIN.put(look, new Face(look, set, Format.GENERAL, false));
        }
    }

    /** Always the same for the same look. */
    static Face of(Look look) {
        return Objects.requireNonNull(PLAIN.get(look));
    }

    static Face inColumn(Look look, Kind kind) {
        Look shown = kind.form().isByHand() && look == Look.PLAIN ? Look.HANDWRITTEN : look;
        String format = look == Look.COLUMN_HEADING ? Format.GENERAL : Format.inColumn(kind);
        return new Face(shown, set(kind), format, false);
    }

    static Face alone(Kind kind) {
        Look look = kind.form().isByHand() ? Look.HANDWRITTEN : Look.VALUE;
        return new Face(look, Set.LEFT, Format.alone(kind), false);
    }

    Face indented() {
        return set == Set.LEFT ? new Face(look, Set.INDENTED, format, quoted) : this;
    }

    Face quote() {
        return new Face(look, set, format, true);
    }

    private static Set set(Kind kind) {
        return switch (kind.form()) {
            case WHOLE, DECIMAL, QUANTITY, MONEY, PERCENT -> Set.RIGHT;
            case TICK -> Set.CENTER;
            case TEXT, DATE -> Set.LEFT;
            case BLANK, SIGNATURE -> Set.INDENTED;
        };
    }
}
