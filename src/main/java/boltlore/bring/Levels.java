package boltlore.bring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lists with levels: whether a row of a deeper level is inside the one above it, which nobody but its writer knows. */
final class Levels {

    static final String INSIDE = "inside";
    private static final String BESIDE = "beside";

    /** A part that rows below it may be inside of. */
    private record Open(int level, DraftPart part) {}

    private final Answers answers;
    private final List<Doubt> doubts;
    private final List<Open> open = new ArrayList<>();

    /** Whether levels are numbers such as 1.2, one step for each level. */
    private boolean numbered;

    Levels(Answers answers, List<Doubt> doubts) {
        this.answers = answers;
        this.doubts = doubts;
    }

    void begin(TableRead read) {
        open.clear();
        Optional<Column> column = column(read);
        numbered = read.entries().stream().anyMatch(entry -> written(entry).contains("."));
        boolean deep = read.entries().stream().map(this::level).distinct().count() > 1;
        column.filter(any -> deep).ifPresent(found -> {
            String at = read.table().address(read.table().firstHead(), found.at());
            if (answers.at(at).isEmpty()) {
                doubts.add(new Doubt(
                        at,
                        0,
                        true,
                        "the list has levels: are rows of a deeper level inside the one above (" + INSIDE
                                + "), their quantity for one of it, or needed beside it (" + BESIDE + ")?",
                        INSIDE));
            }
        });
    }

    private static Optional<Column> column(TableRead read) {
        return read.columns().stream()
                .filter(column -> column.role() == Role.LEVEL)
                .findFirst();
    }

    /** 2 for '2', or for '1.2' where rows are numbered through; 0 where none is written. */
    private int level(Entry entry) {
        String text = written(entry);
        if (!text.matches("\\d{1,3}(\\.\\d+)*")) {
            return 0;
        }
        return numbered ? text.split("\\.", -1).length : Integer.parseInt(text);
    }

    private static String written(Entry entry) {
        return entry.text(Role.LEVEL).replaceAll("\\.0*$", "");
    }

    /** The part that this row's is inside of. */
    Optional<DraftPart> parent(TableRead read, Entry entry, DraftPart part) {
        Optional<Column> column = column(read);
        boolean inside = column.flatMap(
                        found -> answers.at(read.table().address(read.table().firstHead(), found.at())))
                .map(INSIDE::equals)
                .orElse(false);
        if (!inside) {
            return Optional.empty();
        }
        int level = level(entry);
        open.removeIf(above -> above.level() >= level);
        Optional<DraftPart> parent = open.isEmpty()
                ? Optional.empty()
                : Optional.of(open.get(open.size() - 1).part());
        open.add(new Open(level, part));
        return parent.filter(above -> above != part);
    }
}
