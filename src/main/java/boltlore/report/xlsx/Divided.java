package boltlore.report.xlsx;

import boltlore.report.Block;
import boltlore.report.Cell;
import boltlore.report.Page;
import boltlore.report.Phrases;
import boltlore.report.Row;
import boltlore.report.Row.RowKind;
import boltlore.report.Table;
import boltlore.report.xlsx.LaidPage.Stretch;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Tables that go on as others with the same headings, where a sheet of paper ends within them; a group that goes on says so
 * above its rows.
 */
final class Divided {

    /** What sets a table that goes on apart from the one that it continues. */
    private static final String FROM_ROW = "from-row";

    private final PageBreaks breaks;
    private final String continued;

    private Divided(LaidPage laid, String language) {
        this.breaks = PageBreaks.dividing(laid);
        this.continued = " (" + Phrases.of(Divided.class, "paper", language).say("continued") + ")";
    }

    /** Whether a table may go on as another with the same headings: one with boxes for the pen that nothing refers to. */
    static boolean splits(Table table) {
        return table.columns().stream().anyMatch(column -> column.kind().form().isByHand())
                && table.rows().stream().flatMap(row -> row.cells().stream()).noneMatch(Cell.Worked.class::isInstance);
    }

    /**
     * The table with the rows of all others on the page that go on with it: they share its columns, or a line more in one of
     * them would no longer fit the sheet of paper that it was divided for.
     */
    static Table whole(Table table, Page page) {
        Map<String, String> about = undivided(table);
        List<Table> parts = page.tables()
                .filter(each ->
                        each.name().equals(table.name()) && undivided(each).equals(about))
                .toList();
        return parts.size() == 1
                ? table
                : new Table(
                        table.name(),
                        table.about(),
                        table.columns(),
                        parts.stream().flatMap(each -> each.rows().stream()).toList());
    }

    private static Map<String, String> undivided(Table table) {
        Map<String, String> about = new LinkedHashMap<>(table.about());
        about.remove(FROM_ROW);
        return about;
    }

    /** Whether its groups are headed again. */
    static boolean hasGroups(Table table) {
        return splits(table) && table.rows().stream().anyMatch(row -> row.kind() == RowKind.GROUP);
    }

    /** With two tables where a sheet of paper ends within one that may be split, but with one where its headings are repeated. */
    static Page where(LaidPage laid, String language) {
        Divided divided = new Divided(laid, language);
        List<Block> blocks = new ArrayList<>();
        for (Stretch stretch : laid.stretches()) {
            if (stretch.block() instanceof Table table && splits(table)) {
                divided.divide(table, stretch, blocks);
            } else {
                blocks.add(stretch.block());
            }
        }
        Page page = laid.page();
        return page.of(blocks);
    }

    private void divide(Table table, Stretch stretch, List<Block> blocks) {
        List<Integer> ends = breaks.after().stream()
                .filter(row -> row > stretch.first() && row < stretch.last())
                .map(row -> row - stretch.first())
                .toList();
        boolean repeated =
                breaks.repeated().filter(each -> each.table().equals(table)).isPresent();
        if (ends.isEmpty()) {
            blocks.add(table);
        } else if (repeated) {
            List<Row> rows = new ArrayList<>();
            parts(table, ends).values().forEach(rows::addAll);
            blocks.add(rows.size() == table.rows().size() ? table : part(table, 0, rows));
        } else {
            parts(table, ends).forEach((from, rows) -> blocks.add(part(table, from, rows)));
        }
    }

    /** The rows of each sheet of paper by the place of their first. */
    private Map<Integer, List<Row>> parts(Table table, List<Integer> ends) {
        Map<Integer, List<Row>> parts = new LinkedHashMap<>();
        int from = 0;
        for (int i = 0; i <= ends.size(); i++) {
            int to = i < ends.size() ? ends.get(i) : table.rows().size();
            List<Row> rows = new ArrayList<>(group(table, from));
            rows.addAll(table.rows().subList(from, to));
            parts.put(from, rows);
            from = to;
        }
        return parts;
    }

    /** Adds the heading of a group, which is said again, to what stands above each of its rows on the next sheet of paper. */
    static void continueGroups(Table table, LaidPage page, int firstRow, double[] above) {
        double group = 0;
        for (int i = 0; i < table.rows().size(); i++) {
            if (table.rows().get(i).kind() == RowKind.GROUP) {
                group = page.rows().get(firstRow + i).height();
            } else {
                above[firstRow + i] += group;
            }
        }
    }

    /** What heads the group that the row goes on with; nothing where a group begins with it. */
    private List<Row> group(Table table, int from) {
        for (int i = from; i >= 0; i--) {
            Row row = table.rows().get(i);
            if (row.kind() == RowKind.GROUP) {
                List<Cell> none = Collections.nCopies(table.columns().size(), Cell.EMPTY);
                return i == from
                        ? List.of()
                        : List.of(new Row(
                                RowKind.GROUP, "", row.group(), row.words() + continued, none, Map.of(), Map.of()));
            }
        }
        return List.of();
    }

    private static Table part(Table table, int from, List<Row> rows) {
        Map<String, String> about = new LinkedHashMap<>(table.about());
        if (from > 0) {
            about.put(FROM_ROW, String.valueOf(from + 1));
        }
        return new Table(table.name(), about, table.columns(), rows);
    }
}
