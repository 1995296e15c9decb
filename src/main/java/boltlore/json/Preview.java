package boltlore.json;

import boltlore.measure.Legible;
import java.math.BigDecimal;
import java.util.Locale;

/** What stands in a file, short enough for one line of a message and without characters that cannot be read. */
final class Preview {

    private static final int MOST = 60;

    private Preview() {}

    static String text(String text) {
        StringBuilder shown = new StringBuilder("'");
        cut(text).codePoints().forEach(letter -> {
            if (Legible.is(letter)) {
                shown.appendCodePoint(letter);
            } else {
                shown.append(letter == '\n' ? "\\n" : character(letter));
            }
        });
        return shown.append('\'').toString();
    }

    /** In plain digits where that is short, else as it would be written with an exponent. */
    static String number(BigDecimal number) {
        String shown = Math.abs((long) number.scale()) > MOST ? number.toString() : number.toPlainString();
        return cut(shown);
    }

    /** One character, by its code where it cannot be seen. */
    static String character(int letter) {
        boolean seen = letter > ' ' && Character.isDefined(letter) && Legible.is(letter);
        return seen
                ? "'" + Character.toString(letter) + "'"
                : String.format(Locale.ROOT, "the character U+%04X", letter);
    }

    private static String cut(String text) {
        return text.codePointCount(0, text.length()) <= MOST
                ? text
                : text.substring(0, text.offsetByCodePoints(0, MOST)) + "…";
    }
}
