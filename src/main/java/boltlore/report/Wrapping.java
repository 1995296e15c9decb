package boltlore.report;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines at blanks; a word that is longer than a line after a hyphen, or else where it must. */
public final class Wrapping {

    private Wrapping() {}

    /**
     * The lines; one empty line for empty text.
     *
     * @param width characters in a line, at least 1
     */
    public static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.split("\\R", -1)) {
            wrap(paragraph, Math.max(1, width), lines);
        }
        return lines;
    }

    private static void wrap(String paragraph, int width, List<String> lines) {
        StringBuilder line = new StringBuilder();
        for (String word : paragraph.strip().split("\\s+", -1)) {
            if (!line.isEmpty() && length(line) + 1 + length(word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
            while (length(line) > width) {
                int cut = cut(line, width);
                lines.add(line.substring(0, cut));
                line.delete(0, cut);
            }
        }
        lines.add(line.toString());
    }

    private static int cut(StringBuilder line, int width) {
        int last = line.offsetByCodePoints(0, width);
        int hyphen = line.lastIndexOf("-", last - 1);
        return hyphen > 0 ? hyphen + 1 : last;
    }

    /** Length in characters as people count them, near enough: code points. */
    public static int length(CharSequence text) {
        return Character.codePointCount(text, 0, text.length());
    }

    /** Length of the longest word, which no line can be shorter than without a cut. */
    public static int longestWord(String text) {
        int longest = 0;
        for (String word : text.strip().split("\\s+", -1)) {
            longest = Math.max(longest, length(word));
        }
        return longest;
    }
}
