package boltlore.measure;

/**
 * Which characters a text may hold that others will read, on a terminal, a page or a workbook: none that steer a terminal,
 * turn the direction of writing or cannot be seen. One rule for what is refused, what is escaped and what is shown.
 */
public final class Legible {

    private static final char REPLACEMENT = '\uFFFD';
    private static final int SOFT_HYPHEN = 0x00AD;
    private static final int JOINER = 0x200D;
    private static final int NON_JOINER = 0x200C;

    private Legible() {}

    /** Whether a character can be read; a line break and a tab cannot, by themselves. */
    public static boolean is(int character) {
        if (character >= ' ' && character <= '~') {
            return true;
        }
        return switch (Character.getType(character)) {
            case Character.FORMAT ->
                // Hyphenation, and the joints of letters in writings that have them.
                character == SOFT_HYPHEN || character == JOINER || character == NON_JOINER;
            case Character.CONTROL, Character.SURROGATE, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR ->
                false;
            // The last two of each plane are no characters (Unicode 23.7); XML 1.0 (2.2) leaves them out.
            default -> (character & 0xFFFE) != 0xFFFE;
        };
    }

    /** The line with every character that is not legible made visible. */
    public static String line(String line) {
        return shown(line, false);
    }

    /** Lines with every character that is not legible made visible; line breaks stay. */
    public static String lines(String lines) {
        return shown(lines, true);
    }

    private static String shown(String text, boolean lineBreaks) {
        StringBuilder legible = new StringBuilder(text.length());
        text.codePoints()
                .map(letter -> is(letter) || (lineBreaks && letter == '\n') ? letter : REPLACEMENT)
                .forEach(legible::appendCodePoint);
        return legible.toString();
    }
}
