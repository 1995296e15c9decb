package boltlore.report.xlsx;

/**
 * How wide text runs in the body's typeface, in the unit of column widths: the width of a figure.
 *
 * <p>The widths of the printable ASCII characters are those of Adobe's font metrics for Helvetica, in thousandths of the
 * type size (from memory), which Arial shares.
 */
final class FontMetrics {

    private static final int FIGURE = 556;
    private static final int OTHER = 600;
    private static final int FULL_WIDTH = 1000;
    /** Characters up to which a word stays in one piece. */
    private static final int LONG = 12;

    private static final int FIRST_FULL_WIDTH = 0x1100;

    private static final int[] ASCII = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, // space to /
        556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, // 0 to ?
        1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, // @ to O
        667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, // P to _
        333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, // ` to o
        556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584, // p to ~
    };

    private FontMetrics() {}

    static double width(String text) {
        int sum = 0;
        for (int i = 0; i < text.length(); i++) {
            sum += thousandths(text.charAt(i));
        }
        return sum / (double) FIGURE;
    }

    static double longestWord(String text) {
        int longest = 0;
        int word = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            word = isBlank(c) ? 0 : word + thousandths(c);
            longest = Math.max(longest, word);
            word = breaksAfter(text, i) ? 0 : word;
        }
        return longest / (double) FIGURE;
    }

    /** Lines that the text takes when it is wrapped at blanks and hyphens, and inside what is longer than a line. */
    static int lines(String text, double width) {
        int room = Math.max(FIGURE, (int) Math.round(width * FIGURE));
        int lines = 1;
        int used = 0;
        int word = 0;
        int blank = 0;
        for (int i = 0; i <= text.length(); i++) {
            char c = i < text.length() ? text.charAt(i) : ' ';
            boolean ends = isBlank(c);
            word += ends ? 0 : thousandths(c);
            if (!ends && !mayBreakAfter(text, i)) {
                continue;
            }
            if (used > 0 && used + blank + word > room) {
                lines++;
                used = 0;
            }
            used += (used > 0 ? blank : 0) + word;
            lines += Math.max(0, used - 1) / room;
            used = used > room ? used % room : used;
            if (c == '\n') {
                lines++;
                used = 0;
            }
            blank = ends ? ASCII[0] : 0;
            word = 0;
        }
        return lines;
    }

    /** As {@link Character#isWhitespace(char)}, which would look up each letter. */
    private static boolean isBlank(char c) {
        return (c <= ' ' || c > '~') && Character.isWhitespace(c);
    }

    /** Programs break a line after any hyphen or slash that a letter follows (Unicode line breaking, UAX 14). */
    private static boolean mayBreakAfter(String text, int i) {
        if (i == 0 || i + 1 >= text.length() || isBlank(text.charAt(i - 1))) {
            return false;
        }
        return (text.charAt(i) == '-' || text.charAt(i) == '/') && Character.isLetter(text.charAt(i + 1));
    }

    /** A long name in small letters may be broken after its hyphens; a short word, a part number or a file may not. */
    private static boolean breaksAfter(String text, int i) {
        if (i == 0 || i + 1 >= text.length() || text.charAt(i) != '-') {
            return false;
        }
        int start = i;
        int end = i;
        while (start > 0 && !isBlank(text.charAt(start - 1))) {
            start--;
        }
        while (end < text.length() && !isBlank(text.charAt(end))) {
            end++;
        }
        return end - start > LONG
                && text.substring(start, end).chars().noneMatch(Character::isDigit)
                && Character.isLowerCase(text.charAt(i - 1))
                && Character.isLowerCase(text.charAt(i + 1));
    }

    private static int thousandths(char c) {
        if (c >= ' ' && c <= '~') {
            return ASCII[c - ' '];
        }
        return c >= FIRST_FULL_WIDTH ? FULL_WIDTH : OTHER;
    }
}
