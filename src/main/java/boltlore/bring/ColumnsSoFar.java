package boltlore.bring;

import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/** What is known of a table's columns while it is found out: headings, looks, and what each is taken for so far. */
final class ColumnsSoFar {

    private final SortedMap<Integer, Profile> profiles = new TreeMap<>();
    private final SortedMap<Integer, Words.Meaning> meanings = new TreeMap<>();
    private final SortedMap<Integer, Column> columns = new TreeMap<>();

    ColumnsSoFar(Table table, boolean decimalComma) {
        table.columns().forEach(column -> {
            profiles.put(column, new Profile(table, column, decimalComma));
            Words.heading(table.heading(column)).ifPresent(meaning -> meanings.put(column, meaning));
        });
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
