package boltlore.bring;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/** What is known of a table's columns while it is found out: headings, looks, and what each is taken for so far. */
final class ColumnsSoFar {

    private final SortedMap<Integer, Profile> profiles = new TreeMap<>();
    private final SortedMap<Integer, Words.Meaning> meanings = new TreeMap<>();
    private final SortedMap<Integer, Column> columns = new TreeMap<>();
    private final Set<Integer> spread = new HashSet<>();

    ColumnsSoFar(Table table, boolean decimalComma) {
        table.columns().forEach(column -> {
            profiles.put(column, new Profile(table, column, decimalComma));
            Words.heading(table.heading(column)).ifPresent(meaning -> meanings.put(column, meaning));
            underPrice(table, column).ifPresent(meaning -> meanings.put(column, meaning));
        });
    }

    /** What a column of numbers is that stands under 'Price' and says itself only of what, or in which currency. */
    private Optional<Words.Meaning> underPrice(Table table, int column) {
        String group = table.group(column);
        Words.Meaning own = meanings.get(column);
        boolean speaks = own != null && own.whole() && own.role() != Role.UNIT && own.role() != Role.TOTAL;
        boolean priced = Words.heading(group)
                .filter(meaning -> meaning.role() == Role.COST)
                .isPresent();
        if (speaks || !priced || !profile(column).isNumeric()) {
            return Optional.empty();
        }
        if (!table.isOver(column)) {
            spread.add(column);
        }
        return Words.heading(group + " " + table.heading(column));
    }

    /** Whether it is only taken to stand under the heading of its group, which is written over a column left of it. */
    boolean isSpread(int column) {
        return spread.contains(column);
    }

    /** What headings mean, by column; the caller may forget what misleads. */
    SortedMap<Integer, Words.Meaning> meanings() {
        return meanings;
    }

    /** The columns from left to right, as they are taken so far. */
    SortedMap<Integer, Column> columns() {
        return columns;
    }

    Profile profile(int column) {
        return Objects.requireNonNull(profiles.get(column));
    }

    Role role(int column) {
        return Objects.requireNonNull(columns.get(column)).role();
    }

    /** Whether all of its heading is a word for what it is. */
    boolean isWhole(int column) {
        Words.Meaning meaning = meanings.get(column);
        return meaning != null && meaning.whole();
    }

    /** Whether it is headed as what is done or ordered: marks in it tick rows off, and choose nothing. */
    boolean isTicked(int column) {
        Words.Meaning meaning = meanings.get(column);
        return meaning != null && meaning.whole() && (meaning.role() == Role.LEFT || meaning.role() == Role.PACK);
    }

    /** What its heading says beside the word for what it is. */
    String rest(int column) {
        Words.Meaning meaning = meanings.get(column);
        return meaning == null ? "" : meaning.rest();
    }

    void set(int column, Role role, boolean sure, String because) {
        columns.computeIfPresent(column, (at, known) -> known.as(role, sure, because));
    }

    List<Integer> with(Role role) {
        return columns.values().stream()
                .filter(column -> column.role() == role)
                .map(Column::at)
                .toList();
    }

    /** Columns whose heading says nothing. */
    List<Integer> unnamed(Predicate<Profile> look) {
        return columns.values().stream()
                .filter(column -> column.role() == Role.LEFT && !meanings.containsKey(column.at()))
                .map(Column::at)
                .filter(column -> look.test(profile(column)))
                .toList();
    }
}
