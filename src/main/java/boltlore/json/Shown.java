package boltlore.json;

import java.math.BigDecimal;

/** What stands in a file, short enough for one line of a message and without control characters. */
final class Shown {

    private static final int MOST = 60;

    private Shown() {}

    static String text(String text) {
        StringBuilder shown = new StringBuilder("'");
        cut(text).codePoints().forEach(letter -> {
            if (Character.isISOControl(letter)) {
                shown.append(letter == '\n' ? "\\n" : character(letter));
            } else {
                shown.appendCodePoint(letter);
            }
        });
        return shown.append('\'').toString();
    }

    static String number(BigDecimal number) {
        return number.toPlainString();
    }

    /** One character, by its code where it cannot be seen. */
    static String character(int letter) {
        boolean seen = letter > ' ' && Character.isDefined(letter) && !Character.isISOControl(letter);
        return seen ? "'" + Character.toString(letter) + "'" : "the character U+%04X".formatted(letter);
    }

    private static String cut(String text) {
        return text.codePointCount(0, text.length()) <= MOST
                ? text
                : text.substring(0, text.offsetByCodePoints(0, MOST)) + "…";
    }
}
