package boltlore.report.csv;

import boltlore.measure.Legible;

/**
 * One field. Text that a spreadsheet program would take for a formula gets an apostrophe in front, as OWASP's page 'CSV
 * Injection' advises; numbers, negative ones too, are written as they are. A program that parts cells by something else
 * than the comma takes a field apart in spite of its quotation marks: so each part of it is looked at.
 */
final class CsvField {

    private static final String STARTS_FORMULA = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";
    private static final String PARTS_ELSEWHERE = ";|\t\r\n";
    private static final String QUOTED = PARTS_ELSEWHERE + ",\"";
    private static final char UNSEEN = '\uFFFD';

    private CsvField() {}

    static String encode(String said) {
        if (isPlain(said)) {
            return said;
        }
        String text = shown(said);
        return holdsQuoted(text)
                ? '"' + apart(text).replace("\"", "\"\"") + '"'
                : !text.isEmpty() && STARTS_FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    /** Most fields: looking each letter up among those that matter takes ten times as long. */
    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            boolean plain = (letter >= '.' && letter < ';')
                    || (letter >= 'A' && letter <= 'z')
                    || (letter == ' ' || (letter == '-' && i > 0));
            if (!plain) {
                return false;
            }
        }
        return true;
    }

    /** With an apostrophe before each part that begins like a formula. */
    private static String apart(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        boolean first = true;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (first && STARTS_FORMULA.indexOf(letter) >= 0) {
                plain.append('\'');
            }
            plain.append(letter);
            first = PARTS_ELSEWHERE.indexOf(letter) >= 0 || (first && letter == '"');
        }
        return plain.toString();
    }

    private static String shown(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (!isShown(text.charAt(i))) {
                StringBuilder shown = new StringBuilder(text);
                for (int at = i; at < shown.length(); at++) {
                    shown.setCharAt(at, isShown(shown.charAt(at)) ? shown.charAt(at) : UNSEEN);
                }
                return shown.toString();
            }
        }
        return text;
    }

    /** Half of a letter is looked at with its other half, by who makes the text. */
    private static boolean isShown(char letter) {
        return Legible.is(letter)
                || Character.isSurrogate(letter)
                || letter == '\n'
                || letter == '\r'
                || letter == '\t';
    }

    private static boolean holdsQuoted(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (QUOTED.indexOf(text.charAt(i)) >= 0) {
                return true;
            }
        }
        return false;
    }
}
