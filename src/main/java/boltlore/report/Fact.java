package boltlore.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A single value for programs: a particular, or what the last rows of a table come to.
 *
 * @param key the particular's; 'table.row.column' of a total
 * @param says label in the report's language
 * @param unit or currency of a number; may be empty
 */
public record Fact(String key, String says, Kind kind, Cell cell, String unit) {

    /** Each once, though it stands on several pages; what differs under one key bears the block's name too. */
    static List<Fact> of(Report report) {
        Map<String, Fact> facts = new LinkedHashMap<>();
        report.pages().stream()
                .flatMap(Page::particulars)
                .forEach(some -> some.entries().forEach(entry -> add(facts, some.name(), entry)));
        report.tables()
                .forEach(table -> table.rows()
                        .forEach(row -> totals(table, row).forEach(fact -> facts.putIfAbsent(fact.key(), fact))));
        return List.copyOf(facts.values());
    }

    private static void add(Map<String, Fact> facts, String block, Particular entry) {
        if (entry.kind().form().isByHand()) {
            return;
        }
        Fact fact = new Fact(
                entry.key(),
                entry.label(),
                entry.kind(),
                entry.cell(),
                Printed.unit(entry.kind()).strip());
        Fact known = facts.putIfAbsent(fact.key(), fact);
        if (known != null && !known.isSame(fact)) {
            String longer = block + "." + fact.key();
            facts.put(longer, new Fact(longer, fact.says, fact.kind, fact.cell, fact.unit));
        }
    }

    private boolean isSame(Fact other) {
        return says.equals(other.says)
                && kind.equals(other.kind)
                && Printed.inColumn(kind, cell).equals(Printed.inColumn(kind, other.cell));
    }

    /** Of a row that sums up across the groups; nothing of any other row. */
    private static Stream<Fact> totals(Table table, Row row) {
        boolean sums = row.kind() == Row.RowKind.TOTAL
                || (row.kind() == Row.RowKind.SUBTOTAL && row.group().isEmpty());
        return !sums
                ? Stream.empty()
                : table.columns().stream().flatMap(column -> {
                    Cell cell = row.cells().get(table.column(column.key()));
                    boolean number = cell instanceof Cell.Figure || cell instanceof Cell.Worked;
                    return number ? Stream.of(total(table, row, column, cell)) : Stream.empty();
                });
    }

    private static Fact total(Table table, Row row, Column column, Cell cell) {
        String where = table.about().isEmpty()
                ? table.name()
                : table.name() + "." + String.join(".", table.about().values());
        String says = column.heading().isBlank() ? row.words() : row.words() + ", " + column.heading();
        return new Fact(where + "." + row.key() + "." + column.key(), says, column.kind(), cell, column.unit());
    }
}
