package boltlore.report.xlsx;

/** Text for an XML 1.0 part of a workbook. */
final class Xml {

    static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";

    private static final char REPLACEMENT = '\uFFFD';

    private Xml() {}

    /**
     * The text with markup escaped and every character that XML 1.0 (section 2.2) forbids replaced by U+FFFD. What reads
     * like a spreadsheet's escape of a character, <code>_x0041_</code> (ECMA-376 part 1, 22.9.2.19), is escaped itself.
     */
    static String escaped(String text) {
        if (isPlain(text)) {
            return text;
        }
        StringBuilder escaped = new StringBuilder(text.length() + 16);
        int at = 0;
        while (at < text.length()) {
            int character = text.codePointAt(at);
            if (character == '_' && isEscape(text, at)) {
                escaped.append("_x005F_");
            } else {
                append(escaped, character);
            }
            at += Character.charCount(character);
        }
        return escaped.toString();
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' || c == '&' || c == '<' || c == '>' || c == '"' || c == '_' || c >= '\uD800') {
                return false;
            }
        }
        return true;
    }

    private static void append(StringBuilder escaped, int character) {
        switch (character) {
            case '&' -> escaped.append("&amp;");
            case '<' -> escaped.append("&lt;");
            case '>' -> escaped.append("&gt;");
            case '"' -> escaped.append("&quot;");
            default -> escaped.appendCodePoint(isAllowed(character) ? character : REPLACEMENT);
        }
    }

    private static boolean isAllowed(int character) {
        return character == '\t'
                || character == '\n'
                || (character >= ' ' && character < 0xD800)
                || (character >= 0xE000 && character < 0xFFFE)
                || character > 0xFFFF;
    }

    private static boolean isEscape(String text, int at) {
        return at + 6 < text.length()
                && text.charAt(at + 1) == 'x'
                && text.charAt(at + 6) == '_'
                && text.substring(at + 2, at + 6).chars().allMatch(c -> Character.digit(c, 16) >= 0);
    }
}
