package boltlore.report.text;

import boltlore.report.Wrapping;
import java.util.ArrayList;
import java.util.List;

/** Fills text up with blanks. */
final class Padding {

    static final String GAP = "  ";

    private Padding() {}

    /** Text at the left. */
    static String left(String text, int width) {
        return text + blanks(text, width);
    }

    /** Text at the right. */
    static String right(String text, int width) {
        return blanks(text, width) + text;
    }

    /** Stacks of lines as columns, a gap between them, each column's text at its left. */
    static List<String> sideBySide(List<List<String>> stacks, List<Integer> widths) {
        int height = stacks.stream().mapToInt(List::size).max().orElse(0);
        List<String> lines = new ArrayList<>();
        for (int row = 0; row < height; row++) {
            List<String> parts = new ArrayList<>();
            for (int i = 0; i < stacks.size(); i++) {
                parts.add(left(row < stacks.get(i).size() ? stacks.get(i).get(row) : "", widths.get(i)));
            }
            lines.add(String.join(GAP, parts));
        }
        return lines;
    }

    private static String blanks(String text, int width) {
        return " ".repeat(Math.max(0, width - Wrapping.length(text)));
    }
}
