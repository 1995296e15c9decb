package boltlore.report.json;

import java.util.Locale;

import boltlore.report.Utf8;

/** A string as RFC 8259, section 7 writes it; half of a surrogate pair, which UTF-8 cannot hold, as an escape too. */
final class JsonString {

    private JsonString() {}

    static void append(Utf8 json, String value) {
        json.append('"');
        if (isPlain(value)) {
            json.append(value);
        } else {
            json.append(escaped(value));
        }
        json.append('"');
    }

    private static boolean isPlain(String value) {
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            if (c < ' ' || c == '"' || c == '\\' || c == '\u007f' || Character.isSurrogate(c)) {
                return false;
            }
        }
        return true;
    }

    private static String escaped(String value) {
        StringBuilder escaped = new StringBuilder(value.length() + 16);
        for (int i = 0; i < value.length(); i++) {
            append(escaped, value, i);
        }
        return escaped.toString();
    }

    private static void append(StringBuilder json, String value, int i) {
        char c = value.charAt(i);
        if (c == '"' || c == '\\') {
            json.append('\\').append(c);
        } else if (c < ' ' || c == '\u007f' || isLoneSurrogate(value, i)) {
            json.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
        } else {
            json.append(c);
        }
    }

    private static boolean isLoneSurrogate(String text, int i) {
        char c = text.charAt(i);
        if (Character.isHighSurrogate(c)) {
            return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
        }
        return Character.isLowSurrogate(c) && (i == 0 || !Character.isHighSurrogate(text.charAt(i - 1)));
    }
}
