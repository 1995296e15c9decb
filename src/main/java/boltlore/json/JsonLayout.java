package boltlore.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Lays a JSON value out as text: whatever fits into a line of 100 characters stands in one line. */
final class JsonLayout {

    private static final int LINE = 100;
    private static final String INDENT = "  ";

    private final StringBuilder out = new StringBuilder();

    private JsonLayout() {}

    static String lay(JsonOut value) {
        JsonLayout layout = new JsonLayout();
        layout.write(value, "", 0);
        return layout.out.append('\n').toString();
    }

    static String layInList(JsonOut value) {
        JsonLayout layout = new JsonLayout();
        layout.write(value, INDENT, INDENT.length() + 1);
        return layout.out.toString();
    }

    static String quoted(String text) {
        StringBuilder quoted = new StringBuilder(text.length() + 2).append('"');
        for (int i = 0; i < text.length(); i++) {
            escape(text.charAt(i), quoted);
        }
        return quoted.append('"').toString();
    }

    private static void escape(char letter, StringBuilder into) {
        switch (letter) {
            case '"' -> into.append("\\\"");
            case '\\' -> into.append("\\\\");
            case '\n' -> into.append("\\n");
            case '\r' -> into.append("\\r");
            case '\t' -> into.append("\\t");
            default -> {
                if (letter < ' ' || letter == '\u2028' || letter == '\u2029') {
                    into.append(String.format(Locale.ROOT, "\\u%04x", (int) letter));
                } else {
                    into.append(letter);
                }
            }
        }
    }

    /** Writes a value behind {@code taken} characters that already stand in the line. */
    private void write(JsonOut value, String indent, int taken) {
        int start = out.length();
        if (onOneLine(value, LINE - taken)) {
            return;
        }
        out.setLength(start);
        if (value instanceof JsonOut.Members object) {
            block('{', '}', members(object), indent);
        } else if (value instanceof JsonOut.Items list) {
            block(
                    '[',
                    ']',
                    list.items().stream().map(item -> new Entry("", item)).toList(),
                    indent);
        }
    }

    private void block(char opening, char closing, List<Entry> entries, String indent) {
        out.append(opening);
        String inner = indent + INDENT;
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            out.append(i == 0 ? "\n" : ",\n").append(inner).append(entry.key());
            write(entry.value(), inner, inner.length() + entry.key().length() + 1);
        }
        out.append('\n').append(indent).append(closing);
    }

    /** Appends the value in one line; false as soon as it would take more than {@code room}. */
    private boolean onOneLine(JsonOut value, int room) {
        if (value instanceof JsonOut.Plain plain) {
            out.append(plain.literal());
            return true;
        }
        int start = out.length();
        boolean object = value instanceof JsonOut.Members;
        out.append(object ? '{' : '[');
        String between = "";
        for (Entry entry : entries(value)) {
            out.append(between).append(entry.key());
            between = ", ";
            if (!onOneLine(entry.value(), room - (out.length() - start)) || out.length() - start >= room) {
                return false;
            }
        }
        out.append(object ? '}' : ']');
        return true;
    }

    private static List<Entry> entries(JsonOut value) {
        if (value instanceof JsonOut.Members object) {
            return members(object);
        }
        return ((JsonOut.Items) value)
                .items().stream().map(item -> new Entry("", item)).toList();
    }

    private static List<Entry> members(JsonOut.Members object) {
        List<Entry> entries = new ArrayList<>();
        for (Map.Entry<String, JsonOut> member : object.members().entrySet()) {
            entries.add(new Entry(quoted(member.getKey()) + ": ", member.getValue()));
        }
        return entries;
    }

    private record Entry(String key, JsonOut value) {}
}
