package boltlore.report.json;

import boltlore.report.Utf8;
import org.jspecify.annotations.Nullable;

/**
 * JSON (RFC 8259), written down from its first character to its last. An object or a list stands in one line, or, broken,
 * with each of its values in a line of its own.
 */
final class JsonText {

    private static final Level NONE = new Level(false, ' ', 0, null);

    /** @param end the sign that closes it */
    private record Level(
            boolean broken, char end, int depth, @Nullable Level outer) {}

    private final Utf8 utf8 = new Utf8(64 * 1024);
    private Level level = NONE;
    private boolean first = true;
    private boolean afterKey;

    JsonText object() {
        return open('{', new Level(false, '}', level.depth + 1, level));
    }

    JsonText brokenObject() {
        return open('{', new Level(true, '}', level.depth + 1, level));
    }

    JsonText list() {
        return open('[', new Level(false, ']', level.depth + 1, level));
    }

    JsonText brokenList() {
        return open('[', new Level(true, ']', level.depth + 1, level));
    }

    /** Closes the object or list that was opened last. */
    JsonText end() {
        if (level.broken && !first) {
            newLine(level.depth - 1);
        }
        utf8.append(level.end);
        level = level.outer == null ? NONE : level.outer;
        first = false;
        return this;
    }

    /** Begins a member of an object; its value comes next. */
    JsonText key(String key) {
        separate();
        JsonString.append(utf8, key);
        utf8.append(": ");
        afterKey = true;
        return this;
    }

    /** As {@link #key(String)}, for a key of many objects: {@link #encoded} once. */
    JsonText key(byte[] encoded) {
        separate();
        utf8.append(encoded);
        afterKey = true;
        return this;
    }

    static byte[] encoded(String key) {
        Utf8 encoded = new Utf8(4 * key.length());
        JsonString.append(encoded, key);
        return encoded.append(": ").toBytes();
    }

    JsonText text(String text) {
        separate();
        JsonString.append(utf8, text);
        return this;
    }

    JsonText nothing() {
        separate();
        utf8.append("null");
        return this;
    }

    JsonText put(String key, String text) {
        return key(key).text(text);
    }

    private JsonText open(char sign, Level inner) {
        separate();
        utf8.append(sign);
        level = inner;
        first = true;
        return this;
    }

    /** From what stands before in the same object or list. */
    private void separate() {
        if (afterKey) {
            afterKey = false;
            return;
        }
        if (!first) {
            utf8.append(',');
        }
        if (level.broken) {
            newLine(level.depth);
        } else if (!first) {
            utf8.append(' ');
        }
        first = false;
    }

    private void newLine(int depth) {
        utf8.append('\n');
        for (int i = 0; i < depth; i++) {
            utf8.append(' ');
        }
    }

    byte[] toBytes() {
        utf8.append('\n');
        return utf8.toBytes();
    }
}
