package boltlore.json;

import boltlore.measure.Legible;

/** Whether a text can be printed, in a terminal, a page or a workbook: legible characters, line breaks and tabs. */
final class Printable {

    private Printable() {}

    /** Whether a JSON text could hold anything else: behind an escape, or beyond printable ASCII. */
    static boolean isWorthChecking(String json) {
        for (int i = 0; i < json.length(); i++) {
            char letter = json.charAt(i);
            if (letter == '\\' || letter > '~') {
                return true;
            }
        }
        return false;
    }

    static void check(String text, SourceLocation location, Faults faults) {
        int at = firstUnprintable(text);
        if (at >= 0) {
            String found = "a text with " + Preview.character(text.codePointAt(at));
            faults.add(location.fault(found, "text that can be printed", "Remove that character."));
        }
    }

    private static int firstUnprintable(String text) {
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter < ' ' || letter > '~') {
                int character = text.codePointAt(i);
                if (!Legible.is(character) && letter != '\n' && letter != '\t') {
                    return i;
                }
                i += Character.charCount(character) - 1;
            }
        }
        return -1;
    }
}
