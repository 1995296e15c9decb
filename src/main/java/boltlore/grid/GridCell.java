package boltlore.grid;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What stands in one cell.
 *
 * @param text as a person reads it, without blanks around it; of an unread cell, why it could not be read
 * @param number its number with the digits that a spreadsheet keeps (15), or null where it holds none
 * @param formula whether the value was calculated, and is the result as it was saved
 * @param format how the number is written, as the workbook says it (ECMA-376 18.8.31); empty where it does not
 */
public record GridCell(Kind kind, String text, @Nullable BigDecimal number, boolean formula, String format, Face face) {

    /** What a cell holds. */
    public enum Kind {
        EMPTY,
        TEXT,
        NUMBER,
        DATE,
        /** An error value, or a formula whose result was not saved or comes from another file. */
        UNREAD
    }

    /**
     * How it looks, as far as that says something about its row.
     *
     * @param bold whether it is set in bold
     * @param struck whether it is struck through
     */
    public record Face(boolean bold, boolean struck) {

        public static final Face PLAIN = new Face(false, false);
    }

    public static final GridCell EMPTY = new GridCell(Kind.EMPTY, "", null, false, "", Face.PLAIN);

    /** A text; an empty cell where nothing stands in it but blanks. */
    public static GridCell text(String text, Face face) {
        String bare = bare(text);
        return bare.isEmpty() ? EMPTY : new GridCell(Kind.TEXT, bare, null, false, "", face);
    }

    public static GridCell unread(String why) {
        return new GridCell(Kind.UNREAD, why, null, false, "", Face.PLAIN);
    }

    public boolean isEmpty() {
        return kind == Kind.EMPTY;
    }

    public boolean isText() {
        return kind == Kind.TEXT;
    }

    /** Without blanks at its ends, those that do not break included; blanks and line breaks within become one blank. */
    static String bare(String text) {
        return text.replaceAll("[\\p{IsWhite_Space}\\p{Cf}\\p{Cc}]+", " ").strip();
    }
}
