package boltlore.bring;

import boltlore.grid.GridCell;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The heading that rows stand under, and whether those below it belong to what is built. */
final class Section {

    private static final int MOST_WORDS_BESIDE = 3;

    /** Rows above the headings, empty ones included, in which a heading of the table may stand. */
    private static final int FARTHEST = 3;

    private String heading = "";
    private Optional<String> outside = Optional.empty();

    /** Begins with what stands over the table; the first row of a sheet is the title of all of it, and no section. */
    Section(Table table) {
        for (int above = table.firstHead() - 1; above >= table.firstHead() - FARTHEST && heading.isEmpty(); above--) {
            int row = above;
            List<GridCell> texts = IntStream.range(
                            table.firstColumn(),
                            table.firstColumn() + table.headings().size())
                    .mapToObj(column -> table.sheet().cell(row, column))
                    .filter(cell -> !cell.isEmpty())
                    .toList();
            if (texts.size() == 1 && texts.get(0).isText()) {
                begin(texts.get(0).text());
                heading = table.sheet().rows().firstKey() == row ? "" : heading;
                return;
            }
        }
    }

    void begin(String text) {
        heading = text.replaceAll("[:\\s]+$", "");
        outside = reason(text);
    }

    private static Optional<String> reason(String text) {
        if (Words.mentions(Words.Saying.OUTSIDE, text)) {
            return Optional.of("under '" + text + "', which is not needed");
        }
        if (Words.says(Words.Saying.TOOLS, text)) {
            return Optional.of("under '" + text + "', which are tools");
        }
        if (Words.says(Words.Saying.OPTIONAL, text)) {
            return Optional.of("under '" + text + "', which is optional");
        }
        return Optional.empty();
    }

    /** Whether a text that stands alone is a heading by its words: hardly any other word stands beside them. */
    static boolean isWord(String text) {
        return reason(text).isPresent() && Words.plain(text).split(" ").length <= MOST_WORDS_BESIDE;
    }

    String heading() {
        return heading;
    }

    /** Why rows below this heading are left out, if they are. */
    Optional<String> outside() {
        return outside;
    }
}
