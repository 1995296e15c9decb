package boltlore.cli;

import java.util.ArrayList;
import java.util.List;

/** Text broken at blanks to fit a width. */
final class Wrapped {

    private Wrapped() {}

    static List<String> rows(String text, int indent, int width) {
        List<String> rows = new ArrayList<>();
        StringBuilder row = new StringBuilder(" ".repeat(indent));
        int start = indent;
        for (String word : text.split(" ", -1)) {
            if (row.length() > start && row.length() + 1 + word.length() > width) {
                rows.add(row.toString());
                start = indent + 2;
                row = new StringBuilder(" ".repeat(start));
            }
            row.append(row.length() > start ? " " : "").append(word);
        }
        rows.add(row.toString());
        return rows;
    }
}
