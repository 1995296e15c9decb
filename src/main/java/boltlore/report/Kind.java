package boltlore.report;

import java.util.Currency;
import java.util.List;

/**
 * What a column holds, and so how it is set: numbers to the right with a fixed scale, text to the left, boxes empty.
 *
 * @param scale digits after the decimal point of a decimal, an amount of money or a per cent; else 0
 * @param unit ISO 4217 code of an amount of money; else what a number that stands alone is followed by, mostly empty
 * @param entry what may be entered into a box; anything into all else
 */
public record Kind(Form form, int scale, String unit, Entry entry) {

    /**
     * What may be entered into a box.
     *
     * @param day whether it is a date
     * @param answers the closed set of answers, each without a comma; empty where anything may be entered
     */
    public record Entry(boolean day, List<String> answers) {

        public static final Entry ANYTHING = new Entry(false, List.of());

        public Entry {
            answers = List.copyOf(answers);
        }

        /** Whether a program can help to enter it. */
        public boolean isGuided() {
            return day || !answers.isEmpty();
        }
    }

    private static final String TICK_MARK = "\u2713";

    public enum Form {
        TEXT,
        WHOLE,
        DECIMAL,
        /** As many digits as it has: 8 pieces, 1.25 m. */
        QUANTITY,
        MONEY,
        /** 25 is 25 %, not 0.25. */
        PERCENT,
        DATE,
        /** A text that machines read; people read it beside it. */
        CODE,
        /** A box for one tick. */
        TICK,
        /** A box for a hand-written count, reading or serial number. */
        BLANK,
        /** A box for initials or a signature. */
        SIGNATURE;

        public boolean isNumber() {
            return this == WHOLE || this == DECIMAL || this == QUANTITY || this == MONEY || this == PERCENT;
        }

        /** Whether the cell stays empty for the pen. */
        public boolean isByHand() {
            return this == TICK || this == BLANK || this == SIGNATURE;
        }
    }

    public Kind {
        if (scale < 0 || scale > 12) {
            throw new IllegalArgumentException("A scale is 0 to 12 digits, not " + scale);
        }
    }

    private Kind(Form form, int scale, String unit) {
        this(form, scale, unit, Entry.ANYTHING);
    }

    public static Kind text() {
        return new Kind(Form.TEXT, 0, "");
    }

    public static Kind whole() {
        return new Kind(Form.WHOLE, 0, "");
    }

    public static Kind decimal(int scale) {
        return new Kind(Form.DECIMAL, scale, "");
    }

    public static Kind quantity() {
        return new Kind(Form.QUANTITY, 0, "");
    }

    /** In the currency's minor unit. */
    public static Kind money(Currency currency) {
        return money(currency, Math.max(0, currency.getDefaultFractionDigits()));
    }

    /** Finer than the minor unit, for a price per screw. */
    public static Kind money(Currency currency, int scale) {
        return new Kind(Form.MONEY, scale, currency.getCurrencyCode());
    }

    public static Kind percent(int scale) {
        return new Kind(Form.PERCENT, scale, "");
    }

    public static Kind date() {
        return new Kind(Form.DATE, 0, "");
    }

    /** Of at most 25 capitals, digits, blanks and signs of {@code $%*+-./:}, so that it stays small. */
    public static Kind code() {
        return new Kind(Form.CODE, 0, "");
    }

    public static Kind tick() {
        return new Kind(Form.TICK, 0, "", new Entry(false, List.of(TICK_MARK)));
    }

    public static Kind blank() {
        return new Kind(Form.BLANK, 0, "");
    }

    /** A number that says its unit where it stands alone: 'kg'. */
    public Kind in(String unitOfNumber) {
        return new Kind(form, scale, unitOfNumber, entry);
    }

    /** A box for a date. */
    public Kind day() {
        return new Kind(form, scale, unit, new Entry(true, List.of()));
    }

    /** A box for one of these answers. */
    public Kind oneOf(String... answers) {
        return new Kind(form, scale, unit, new Entry(false, List.of(answers)));
    }

    public static Kind signature() {
        return new Kind(Form.SIGNATURE, 0, "");
    }
}
