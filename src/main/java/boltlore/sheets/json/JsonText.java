package boltlore.sheets.json;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;

/** JSON (RFC 8259) from maps, collections, text and optional text, in the order in which they come. */
final class JsonText {

    private final StringBuilder text = new StringBuilder(16 * 1024);

    private JsonText() {}

    /** An object that holds no list stands in one line, as a row of a table does, and so does a list of mere texts. */
    static String of(Object value) {
        JsonText json = new JsonText();
        json.append(value, 0);
        return json.text.append('\n').toString();
    }

    private void append(Object value, int depth) {
        if (value instanceof Map<?, ?> map) {
            appendObject(map, depth, holdsList(map));
        } else if (value instanceof Collection<?> list) {
            appendList(list, depth, !list.stream().allMatch(String.class::isInstance));
        } else if (value instanceof Optional<?> optional) {
            if (optional.isEmpty()) {
                text.append("null");
            } else {
                quote(String.valueOf(optional.get()));
            }
        } else {
            quote(value.toString());
        }
    }

    private static boolean holdsList(Map<?, ?> map) {
        for (Object value : map.values()) {
            if (value instanceof Collection || (value instanceof Map<?, ?> inner && holdsList(inner))) {
                return true;
            }
        }
        return false;
    }

    private void appendObject(Map<?, ?> map, int depth, boolean broken) {
        text.append('{');
        String separator = "";
        for (Map.Entry<?, ?> entry : map.entrySet()) {
            text.append(separator);
            separator(broken, depth + 1);
            quote(String.valueOf(entry.getKey()));
            text.append(": ");
            append(entry.getValue(), depth + 1);
            separator = broken ? "," : ", ";
        }
        separator(broken && !map.isEmpty(), depth);
        text.append('}');
    }

    private void appendList(Collection<?> list, int depth, boolean broken) {
        text.append('[');
        String separator = "";
        for (Object value : list) {
            text.append(separator);
            separator(broken, depth + 1);
            append(value, depth + 1);
            separator = broken ? "," : ", ";
        }
        separator(broken && !list.isEmpty(), depth);
        text.append(']');
    }

    private void separator(boolean broken, int depth) {
        if (broken) {
            text.append('\n');
            for (int i = 0; i < depth; i++) {
                text.append(' ');
            }
        }
    }

    private void quote(String value) {
        text.append('"');
        if (isPlain(value)) {
            text.append(value);
        } else {
            for (int i = 0; i < value.length(); i++) {
                quote(value, i);
            }
        }
        text.append('"');
    }

    private static boolean isPlain(String value) {
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            if (c < ' ' || c == '"' || c == '\\' || c >= '\u007f') {
                return false;
            }
        }
        return true;
    }

    private void quote(String value, int i) {
        char c = value.charAt(i);
        if (c == '"' || c == '\\') {
            text.append('\\').append(c);
        } else if (c < ' ' || c == '\u007f' || isLoneSurrogate(value, i)) {
            text.append(String.format("\\u%04x", (int) c));
        } else {
            text.append(c);
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
