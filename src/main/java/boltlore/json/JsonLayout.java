package boltlore.json;

import java.util.Map;

/**
 * Lays a JSON value out as text: whatever fits into a line of 100 characters stands in one line, and so does each row of a
 * table, however long.
 */
final class JsonLayout {

    private static final int LINE = 100;
    private static final int INDENT = 2;
    /** Taken, where nothing is broken however wide it is. */
    private static final int IN_ONE_LINE = -1;

    private final JsonText json;

    private JsonLayout(JsonText json) {
        this.json = json;
    }

    static String lay(JsonOut value) {
        JsonLayout layout = new JsonLayout(new JsonText(INDENT));
        layout.write(value, 0, 0);
        return layout.json.written() + '\n';
    }

    static String layInLine(JsonOut value) {
        JsonLayout layout = new JsonLayout(new JsonText(0));
        layout.write(value, 0, IN_ONE_LINE);
        return layout.json.written();
    }

    static String layInList(JsonOut value) {
        JsonLayout layout = new JsonLayout(new JsonText(INDENT, 1));
        layout.write(value, 1, INDENT + 1);
        return layout.json.written();
    }

    /** Writes a value behind {@code taken} characters of its line, or within a line that is not broken. */
    private void write(JsonOut value, int depth, int taken) {
        if (value instanceof JsonOut.Text text) {
            json.text(text.text());
        } else if (value instanceof JsonOut.Plain plain) {
            json.literal(plain.literal());
        } else {
            writeAll(value, depth, taken != IN_ONE_LINE && isBroken(value, LINE - taken));
        }
    }

    private static boolean isBroken(JsonOut value, int room) {
        return (value instanceof JsonOut.Items list && list.aLineEach()) || width(value, room) > room;
    }

    private void writeAll(JsonOut value, int depth, boolean broken) {
        int inner = broken ? INDENT * (depth + 1) + 1 : IN_ONE_LINE;
        if (value instanceof JsonOut.Members object) {
            JsonText opened = broken ? json.brokenObject() : json.object();
            for (Map.Entry<String, JsonOut> member : object.members().entrySet()) {
                json.key(member.getKey());
                int taken = broken ? inner + JsonText.width(member.getKey()) + 2 : IN_ONE_LINE;
                write(member.getValue(), depth + 1, taken);
            }
            opened.end();
        } else {
            JsonOut.Items list = (JsonOut.Items) value;
            JsonText opened = broken ? json.brokenList() : json.list();
            list.items().forEach(item -> write(item, depth + 1, list.aLineEach() ? IN_ONE_LINE : inner));
            opened.end();
        }
    }

    /** Characters of the value in one line; no longer counted where they are more than there is room for. */
    private static int width(JsonOut value, int room) {
        if (value instanceof JsonOut.Text text) {
            return JsonText.width(text.text());
        }
        if (value instanceof JsonOut.Plain plain) {
            return plain.literal().length();
        }
        int width = 2;
        String between = "";
        if (value instanceof JsonOut.Members object) {
            for (Map.Entry<String, JsonOut> member : object.members().entrySet()) {
                width +=
                        between.length() + JsonText.width(member.getKey()) + 2 + width(member.getValue(), room - width);
                between = ", ";
                if (width > room) {
                    return width;
                }
            }
        } else {
            for (JsonOut item : ((JsonOut.Items) value).items()) {
                width += between.length() + width(item, room - width);
                between = ", ";
                if (width > room) {
                    return width;
                }
            }
        }
        return width;
    }
}
