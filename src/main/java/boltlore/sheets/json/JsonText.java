package boltlore.sheets.json;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** JSON (RFC 8259) from maps, collections, text and optional text, in the order in which they come. */
final class JsonText {

    private static final int SHORT_LIST = 100;
    private static final int SHORT_OBJECT = 4000;

    private JsonText() {}

    /** A short list, and an object of nothing but short ones, stand in one line: a row of a table does. */
    static String of(Object value) {
        return text(value, "\n");
    }

    private static String text(Object value, String lineBreak) {
        if (value instanceof Map<?, ?> map) {
            return joined(map.entrySet(), SHORT_OBJECT, '{', '}', lineBreak);
        } else if (value instanceof Collection<?> list) {
            return joined(list, SHORT_LIST, '[', ']', lineBreak);
        } else if (value instanceof Map.Entry<?, ?> entry) {
            return quoted(String.valueOf(entry.getKey())) + ": " + text(entry.getValue(), lineBreak);
        }
        if (value instanceof Optional<?> optional) {
            return optional.map(some -> text(some, lineBreak)).orElse("null");
        }
        return quoted(value.toString());
    }

    private static String joined(Collection<?> values, int limit, char open, char close, String lineBreak) {
        String deeper = lineBreak + " ";
        List<String> items = values.stream().map(value -> text(value, deeper)).toList();
        String line = open + String.join(", ", items) + close;
        if (line.length() <= limit && line.indexOf('\n') < 0) {
            return line;
        }
        return open + deeper + String.join("," + deeper, items) + lineBreak + close;
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                quoted.append('\\').append(c);
            } else if (c < ' ' || c == '\u007f' || isLoneSurrogate(text, i)) {
                quoted.append(String.format("\\u%04x", (int) c));
            } else {
                quoted.append(c);
            }
        }
        return quoted.append('"').toString();
    }

    private static boolean isLoneSurrogate(String text, int i) {
        char c = text.charAt(i);
        if (Character.isHighSurrogate(c)) {
            return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
        }
        return Character.isLowSurrogate(c) && (i == 0 || !Character.isHighSurrogate(text.charAt(i - 1)));
    }
}
