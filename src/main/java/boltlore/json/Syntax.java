package boltlore.json;

import boltlore.faults.Fault;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import org.jspecify.annotations.Nullable;

/** Turns a slip in the writing of JSON into a fault that says what to do about it. */
final class Syntax {

    private Syntax() {}

    /** The fault for what stopped the parser; {@code open} is the innermost object or list that is not closed yet. */
    static Fault fault(String file, char[] text, JsonProcessingException broken, @Nullable SourceLocation open) {
        JsonLocation location = broken.getLocation();
        int line = location == null ? 0 : location.getLineNr();
        String pointer = open == null ? "" : open.pointer();
        int offset = location == null ? text.length : (int) location.getCharOffset();
        if (broken instanceof JsonEOFException || offset >= text.length) {
            return new Fault(
                    file,
                    line,
                    pointer,
                    "the end of the file",
                    unfinished(open),
                    "The file is cut off: restore it whole.");
        }
        int at = firstOffence(text, offset);
        String found = Preview.character(Character.codePointAt(text, at));
        return new Fault(file, line, pointer, found + " where JSON allows none", expected(broken), advice(text, at));
    }

    /** The parser has read one character too far in some cases and none in others: the blank before is never at fault. */
    private static int firstOffence(char[] text, int offset) {
        int at = offset;
        while (at < text.length - 1 && (text[at] == ' ' || text[at] == '\r')) {
            at++;
        }
        return at;
    }

    private static String unfinished(@Nullable SourceLocation open) {
        return open == null ? "the rest of the value" : "the rest of what begins in line " + open.line();
    }

    private static String expected(JsonProcessingException broken) {
        String message = broken.getOriginalMessage();
        if (message.contains("comment")) {
            return "data without comments";
        }
        if (message.contains("field name")) {
            return "a key in double quotes, or '}'";
        }
        if (message.contains("colon")) {
            return "':' between key and value";
        }
        if (message.contains("comma")) {
            return "',' or the closing bracket";
        }
        if (message.contains("CTRL-CHAR")) {
            return "text without bare line breaks or control characters";
        }
        if (message.contains("escape")) {
            return "one of the escapes \\\" \\\\ \\/ \\b \\f \\n \\r \\t \\u0000";
        }
        return "a text, number, object, list, true, false or null";
    }

    private static String advice(char[] text, int at) {
        return switch (text[at]) {
            case '}', ']' -> "Remove the comma before it, or add what is missing.";
            case '/', '#' -> "JSON has no comments: put the remark into a text such as 'note'.";
            case '\'', '\u2018', '\u2019', '\u201C', '\u201D', '\u201E' -> "Use the plain double quote (\").";
            case '\n', '\t' -> "Close the text with a double quote, or write \\n or \\t.";
            default -> "Check quotes, commas and brackets just before it.";
        };
    }
}
