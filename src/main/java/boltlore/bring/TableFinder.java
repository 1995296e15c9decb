package boltlore.bring;

import boltlore.grid.GridCell;
import boltlore.grid.Sheet;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds the tables of a sheet by their headings: rows of short texts, several of them known words of lists of parts. Where
 * no word is known, the last row of texts above rows with numbers counts, and is in doubt.
 */
final class TableFinder {

    private static final int LONGEST_HEADING = 60;
    private static final int FEWEST_ROWS = 2;

    /** What a heading over several others may say by itself. */
    private static final List<Role> HEADING_GROUPS =
            List.of(Role.GROUP, Role.DESCRIPTION, Role.FINISH, Role.MATERIAL, Role.NOTE, Role.REVISION);

    private final Sheet sheet;
    private static final List<Role> COUNTED = List.of(Role.QUANTITY, Role.COST, Role.TOTAL, Role.MASS);

    private final int first;
    private final int beyond;

    private TableFinder(Sheet sheet, int first, int beyond) {
        this.sheet = sheet;
        this.first = first;
        this.beyond = beyond;
    }

    static List<Table> find(Sheet sheet) {
        List<Table> tables = new ArrayList<>();
        int from = 0;
        for (int column : gaps(sheet)) {
            boolean both = headed(sheet, from, column) && headed(sheet, column + 1, sheet.width());
            if (both) {
                tables.addAll(new TableFinder(sheet, from, column).tables());
                from = column + 1;
            }
        }
        tables.addAll(new TableFinder(sheet, from, sheet.width()).tables());
        return tables;
    }

    /** Columns with nothing in them, between others: tables may stand side by side. */
    private static List<Integer> gaps(Sheet sheet) {
        return IntStream.range(1, sheet.width())
                .filter(column -> sheet.rows().values().stream()
                        .allMatch(line -> line.cell(column).isEmpty()))
                .filter(column -> !sheet.rows().isEmpty()
                        && sheet.mergedAt(headerLike(sheet), column).isEmpty())
                .boxed()
                .toList();
    }

    private static int headerLike(Sheet sheet) {
        return new TableFinder(sheet, 0, sheet.width())
                .heads().stream().findFirst().orElse(sheet.rows().firstKey());
    }

    private static boolean headed(Sheet sheet, int from, int to) {
        TableFinder strip = new TableFinder(sheet, from, to);
        return strip.heads().stream()
                .anyMatch(row -> strip.meanings(row).stream()
                        .anyMatch(meaning -> meaning.role() == Role.NAME || meaning.role() == Role.PART_NUMBER));
    }

    private List<Table> tables() {
        List<Integer> heads = heads();
        boolean sure = !heads.isEmpty();
        if (!sure) {
            heads = new TextRows(sheet, first, beyond).last().map(List::of).orElse(List.of());
        }
        List<Table> tables = new ArrayList<>();
        if (heads.isEmpty()) {
            headless().ifPresent(tables::add);
        }
        for (int i = 0; i < heads.size(); i++) {
            int last = i + 1 < heads.size()
                    ? heads.get(i + 1) - 1
                    : sheet.rows().isEmpty() ? 0 : sheet.rows().lastKey();
            tables.add(table(heads.get(i), last, sure));
        }
        return tables.stream().filter(table -> !table.lines().isEmpty()).toList();
    }

    /** Rows of names and numbers without any heading: what each column is must be asked. */
    private Optional<Table> headless() {
        List<Integer> rows = sheet.rows().keySet().stream()
                .filter(row -> TextRows.isData(filled(row)))
                .toList();
        if (rows.size() < FEWEST_ROWS) {
            return Optional.empty();
        }
        int from = rows.get(0);
        int last = sheet.rows().lastKey();
        List<String> none = Collections.nCopies(lastColumn(from, from - 1, last) - first, "");
        return Optional.of(new Table(sheet, from, from, last, first, none, none, false));
    }

    /** Rows that are headings by their words. */
    private List<Integer> heads() {
        List<Integer> heads = new ArrayList<>();
        sheet.rows().keySet().stream().filter(this::isHead).forEach(row -> {
            if (!heads.isEmpty() && isCounted(heads.get(heads.size() - 1), row)) {
                return;
            }
            // Two rows of headings, one above the other, are one.
            boolean below = !heads.isEmpty() && heads.get(heads.size() - 1) == row - 1;
            if (!below) {
                heads.add(row);
            } else if (meanings(row).size() >= meanings(row - 1).size()) {
                heads.set(heads.size() - 1, row);
            }
        });
        return heads;
    }

    private List<GridCell> filled(int row) {
        Sheet.Line line = sheet.rows().get(row);
        return line == null
                ? List.of()
                : IntStream.range(first, beyond)
                        .mapToObj(line::cell)
                        .filter(cell -> !cell.isEmpty())
                        .toList();
    }

    private List<Words.Meaning> meanings(int row) {
        return filled(row).stream()
                .filter(cell -> cell.isText() && cell.text().length() <= LONGEST_HEADING)
                .flatMap(cell -> Words.heading(cell.text()).stream())
                .toList();
    }

    private boolean isHead(int row) {
        List<GridCell> filled = filled(row);
        long texts = filled.stream().filter(GridCell::isText).count();
        List<Words.Meaning> meanings = meanings(row);
        long whole = meanings.stream().filter(Words.Meaning::whole).count();
        long kinds = meanings.stream().map(Words.Meaning::role).distinct().count();
        return texts > filled.size() - texts
                && kinds >= 2
                && (whole >= 2 || (whole == 1 && meanings.size() * 2 >= filled.size()))
                && whole * 4 + meanings.size() >= filled.size()
                && filled.stream()
                        .noneMatch(cell -> cell.isText() && cell.text().startsWith("http"));
    }

    /** Whether the row has a number where the headings above it call for one: a part, whatever words are in its name. */
    private boolean isCounted(int head, int row) {
        return IntStream.range(first, beyond)
                .filter(column -> Amount.of(sheet.cell(row, column), false).isPresent())
                .anyMatch(column -> Words.heading(text(head, column))
                        .filter(meaning -> meaning.whole() && COUNTED.contains(meaning.role()))
                        .isPresent());
    }

    private Table table(int head, int last, boolean sure) {
        boolean two = isSecond(head);
        int lowest = two ? head + 1 : head;
        boolean over = isGroups(head - 1);
        List<String> groups = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        int end = lastColumn(head, lowest, last);
        for (int column = first; column < end; column++) {
            String own = text(head, column);
            String below = two ? cellText(head + 1, column) : "";
            String above = over ? spread(head - 1, column) : "";
            boolean named = !below.isEmpty() && !below.equals(own);
            // Three rows: the one below goes on with a heading of this column alone, under that of a group.
            boolean three = named && !above.isEmpty() && isAlone(head, column);
            String heading = three ? own + " " + below : named ? below : own;
            // A sum in the row of headings: the heading proper stands above it.
            texts.add(heading.isEmpty() && over ? cellText(head - 1, column) : heading);
            groups.add(named && !three ? spread(head, column) : above);
        }
        return new Table(
                sheet, over ? head - 1 : head, lowest + 1, last, first, List.copyOf(texts), List.copyOf(groups), sure);
    }

    /** A heading of one column: neither merged over others, nor the first of several that say nothing of their own. */
    private boolean isAlone(int row, int column) {
        boolean next = column + 1 >= beyond
                || !sheet.cell(row, column + 1).isEmpty()
                || sheet.cell(row + 1, column + 1).isEmpty();
        return sheet.cell(row, column).isText() && sheet.mergedAt(row, column).isEmpty() && next;
    }

    private int lastColumn(int head, int lowest, int last) {
        int beyondHead = first;
        for (int column = first; column < beyond; column++) {
            int at = column;
            boolean data = sheet.rows().subMap(lowest + 1, true, Math.max(last, lowest + 1), true).values().stream()
                            .filter(line -> !line.cell(at).isEmpty())
                            .count()
                    >= FEWEST_ROWS;
            if (!text(head, column).isEmpty() || data) {
                beyondHead = column + 1;
            }
        }
        return beyondHead;
    }

    /** The text of a heading, which may be merged over several columns or rows. */
    private String text(int row, int column) {
        GridCell shown = sheet.shown(row, column);
        return shown.isText() ? shown.text() : "";
    }

    private String cellText(int row, int column) {
        GridCell cell = sheet.cell(row, column);
        return cell.isText() ? cell.text() : "";
    }

    /** The text over this column: merged, or the next one to the left where merging got lost. */
    private String spread(int row, int column) {
        for (int at = column; at >= first; at--) {
            String text = text(row, at);
            if (!text.isEmpty()) {
                return sheet.mergedAt(row, at)
                                .map(block -> block.holds(row, column))
                                .orElse(true)
                        ? text
                        : "";
            }
        }
        return "";
    }

    /** Whether the row below the headings goes on with them: texts only, and only beside the columns of names. */
    private boolean isSecond(int head) {
        List<GridCell> below = filled(head + 1);
        if (below.size() < 2
                || below.stream().anyMatch(cell -> !cell.isText() || cell.text().length() > 30)) {
            return false;
        }
        boolean covers = IntStream.range(first, beyond)
                .filter(column -> !sheet.cell(head + 1, column).isEmpty())
                .anyMatch(column -> Words.heading(cellText(head, column))
                        .filter(meaning -> meaning.whole() && !HEADING_GROUPS.contains(meaning.role()))
                        .isPresent());
        boolean named = IntStream.range(first, beyond)
                .anyMatch(column -> sheet.cell(head + 1, column).isEmpty()
                        && Words.heading(text(head, column))
                                .filter(meaning -> meaning.role() == Role.NAME || meaning.role() == Role.PART_NUMBER)
                                .isPresent());
        return !covers && named;
    }

    /** Whether the row above the headings heads groups of them: several texts, or one that is merged over some columns. */
    private boolean isGroups(int row) {
        List<GridCell> above = filled(row);
        long texts = above.stream().filter(GridCell::isText).count();
        boolean part = IntStream.range(first, beyond)
                .filter(column -> sheet.cell(row, column).isText())
                .anyMatch(column -> column > first
                        && sheet.mergedAt(row, column)
                                .map(block -> block.lastColumn() > block.firstColumn())
                                .orElse(false));
        boolean price = IntStream.range(first + 1, beyond).anyMatch(column -> isPrice(row, column));
        return (texts >= 2 && texts == above.size()) || ((part || price) && texts >= 1);
    }

    /** A word for a price right over the heading of a column. */
    private boolean isPrice(int row, int column) {
        return !sheet.cell(row + 1, column).isEmpty()
                && Words.heading(cellText(row, column))
                        .filter(meaning -> meaning.whole() && meaning.role() == Role.COST)
                        .isPresent();
    }
}
