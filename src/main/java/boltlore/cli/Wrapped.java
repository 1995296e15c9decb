package boltlore.cli;

import java.util.ArrayList;
import java.util.List;

/** Text broken at blanks to fit a width. */
final class Wrapped {

    private static final int FURTHER_INDENT = 2;

    private Wrapped() {}

    /** The rows of a line; those after the first are indented by two more. A word that is too long stays whole. */
    static List<String> rows(String line, int width) {
        int indent = 0;
        while (indent < line.length() && line.charAt(indent) == ' ') {
            indent++;
        }
        String further = " ".repeat(indent + FURTHER_INDENT);
        List<String> rows = new ArrayList<>();
        String rest = line;
        int start = indent;
        while (rest.length() > width) {
            int blank = rest.lastIndexOf(' ', width);
            int cut = blank > start ? blank : rest.indexOf(' ', Math.max(width, start));
            if (cut < 0) {
                break;
            }
            rows.add(rest.substring(0, cut).stripTrailing());
            rest = further + rest.substring(cut).stripLeading();
            start = further.length();
        }
        rows.add(rest);
        return rows;
    }
}
