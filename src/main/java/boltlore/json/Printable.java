package boltlore.json;

/**
 * Whether a text can be printed, in a terminal, a page or a workbook: no control characters but line break and tab, no
 * halves of surrogate pairs and none of the two code points that XML 1.0 (2.2) leaves out.
 */
final class Printable {

    private Printable() {}

    /** Whether a JSON text could hold any of them: most can come in by an escape only. */
    static boolean isWorthChecking(String json) {
        return json.indexOf('\\') >= 0 || json.indexOf('\uFFFE') >= 0 || json.indexOf('\uFFFF') >= 0;
    }

    static void check(String text, Spot spot, Faults faults) {
        int at = firstUnprintable(text);
        if (at >= 0) {
            String found = "a text with " + Shown.character(text.codePointAt(at));
            faults.add(spot.fault(found, "text that can be printed", "Remove that character."));
        }
    }

    private static int firstUnprintable(String text) {
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter < ' ' || letter > '~') {
                if (isUnprintable(text, i)) {
                    return i;
                }
                i += Character.isHighSurrogate(letter) ? 1 : 0;
            }
        }
        return -1;
    }

    private static boolean isUnprintable(String text, int at) {
        char letter = text.charAt(at);
        if (Character.isHighSurrogate(letter)) {
            return at + 1 == text.length() || !Character.isLowSurrogate(text.charAt(at + 1));
        }
        return Character.isLowSurrogate(letter)
                || letter >= '\uFFFE'
                || (Character.isISOControl(letter) && letter != '\n' && letter != '\t');
    }
}
