package boltlore.bring;

import boltlore.grid.Sheet;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The options that columns of values stand for, by the names that the catalogue gives them. */
final class Options {

    /** Stands among the marked options of a row that is fitted in none of them. */
    static final String NOT_FITTED = "";

    private static final String ANY = "any";
    private static final String NONE = "none";

    /** Words of values by their names, by option. */
    private final Map<String, Map<String, String>> values = new LinkedHashMap<>();

    private final Map<String, String> words = new LinkedHashMap<>();

    void columnsOf(TableRead read) {
        valueColumns(read).stream().filter(column -> !isAll(column)).forEach(column -> {
            words.putIfAbsent(option(column), column.option());
            values.computeIfAbsent(option(column), key -> new LinkedHashMap<>())
                    .putIfAbsent(value(column), column.value());
        });
    }

    /** A column among those of values that stands for all of them. */
    private static boolean isAll(Column column) {
        return Words.isJust(Words.Saying.ALL, column.value());
    }

    private static List<Column> valueColumns(TableRead read) {
        return read.columns().stream()
                .filter(column -> column.role() == Role.VALUE)
                .toList();
    }

    /** Words of values by name, by the name of their option. */
    Map<String, Map<String, String>> all() {
        Map<String, Map<String, String>> all = new LinkedHashMap<>();
        values.keySet().forEach(option -> all.put(option, choices(option)));
        return all;
    }

    /** Words of the values of an option by name; one that is the only one is chosen, or not. */
    private Map<String, String> choices(String option) {
        Map<String, String> choices = new LinkedHashMap<>(values.getOrDefault(option, Map.of()));
        if (choices.size() == 1) {
            String only = choices.keySet().iterator().next();
            choices.put("without-" + only, "Without: " + choices.get(only));
        }
        return choices;
    }

    String words(String option) {
        return words.getOrDefault(option, option);
    }

    String option(Column column) {
        String name = Slugs.name(column.option());
        boolean reserved = List.of("any", "all", "not", "filled").contains(name);
        return name.isEmpty() ? "variant" : reserved ? name + "-option" : name;
    }

    String value(Column column) {
        String name = Slugs.name(column.value());
        return name.isEmpty() ? "column-" + Sheet.letters(column.at()).toLowerCase(Locale.ROOT) : name;
    }

    /** The option whose columns count this row, where they hold more than marks. */
    Optional<String> counted(TableRead read, Entry entry) {
        return valueColumns(read).stream()
                .filter(column -> {
                    Amount amount = entry.values().get(column.at());
                    return amount != null
                            && !amount.unit().equals("mark")
                            && amount.number().signum() != 0;
                })
                .map(this::option)
                .findFirst();
    }

    /** Columns of one option by the quantity that they hold, zero left out. */
    Map<Amount, List<Column>> byQuantity(TableRead read, Entry entry, String option) {
        Map<Amount, List<Column>> byQuantity = new LinkedHashMap<>();
        valueColumns(read).stream()
                .filter(column -> option(column).equals(option))
                .forEach(column -> {
                    Amount amount = entry.values().getOrDefault(column.at(), new Amount(BigDecimal.ZERO, ""));
                    if (amount.number().signum() > 0) {
                        String unit = amount.unit().equals("mark") ? "" : amount.unit();
                        Amount each = new Amount(amount.number().stripTrailingZeros(), unit);
                        byQuantity
                                .computeIfAbsent(each, key -> new ArrayList<>())
                                .addAll(isAll(column) ? ofOption(read, option) : List.of(column));
                    }
                });
        return byQuantity;
    }

    /** The values that are marked in this row, by option; an option of which all are marked, or which does not matter, is left out. */
    Map<String, List<String>> marked(TableRead read, Entry entry, Answers answers, List<Doubt> doubts) {
        Map<String, List<String>> marked = new LinkedHashMap<>();
        Set<String> names = new LinkedHashSet<>();
        valueColumns(read).forEach(column -> names.add(option(column)));
        Optional<String> counted = counted(read, entry);
        boolean some = false;
        for (String option : names) {
            List<String> fitted = valueColumns(read).stream()
                    .filter(column -> option(column).equals(option))
                    .filter(column -> isFitted(entry, column))
                    .flatMap(column -> isAll(column)
                            ? values.getOrDefault(option, Map.of()).keySet().stream()
                            : Stream.of(value(column)))
                    .distinct()
                    .toList();
            some |= !fitted.isEmpty();
            marked.put(option, fitted);
        }
        if (!some) {
            return isUnsaid(read, entry) && anyOf(read, entry, answers, doubts)
                    ? Map.of()
                    : notNeeded(read, entry, doubts);
        }
        for (String option : names) {
            if (marked.getOrDefault(option, List.of()).isEmpty() && matters(read, option, answers, doubts)) {
                return Map.of(NOT_FITTED, List.of());
            }
        }
        counted.ifPresent(marked::remove);
        return withoutAll(marked);
    }

    /** A quantity, and not one sign under any value, not even that for 'no'. */
    private static boolean isUnsaid(TableRead read, Entry entry) {
        return entry.quantity() != null
                && valueColumns(read).stream()
                        .allMatch(column ->
                                read.table().cell(entry.row(), column.at()).isEmpty());
    }

    /** Whether a row that is marked nowhere is fitted always: that is asked once a table. */
    private static boolean anyOf(TableRead read, Entry entry, Answers answers, List<Doubt> doubts) {
        String at = read.table()
                .address(read.table().firstHead(), valueColumns(read).get(0).at());
        Optional<String> answer = answers.at(at);
        if (answer.isEmpty() && doubts.stream().noneMatch(doubt -> doubt.at().equals(at))) {
            String says = "rows such as '" + entry.name() + "' have no mark: are they fitted whichever is chosen ("
                    + ANY + "), or not at all (" + NONE + ")?";
            doubts.add(new Doubt(at, 0, true, says, ANY));
        }
        return !answer.map(NONE::equals).orElse(false);
    }

    private static Map<String, List<String>> notNeeded(TableRead read, Entry entry, List<Doubt> doubts) {
        String at = read.table().address(entry.row(), valueColumns(read).get(0).at());
        // Where a cell is in doubt, that is asked, and nothing is told yet.
        boolean known =
                valueColumns(read).stream().allMatch(column -> entry.values().containsKey(column.at()));
        if (known) {
            doubts.add(new Doubt(at, entry.row(), false, "'" + entry.name() + "' is not needed under any value", ""));
        }
        return Map.of(NOT_FITTED, List.of());
    }

    private List<Column> ofOption(TableRead read, String option) {
        return valueColumns(read).stream()
                .filter(column -> option(column).equals(option) && !isAll(column))
                .toList();
    }

    private static boolean isFitted(Entry entry, Column column) {
        Amount amount = entry.values().get(column.at());
        return amount != null && amount.number().signum() > 0;
    }

    /** Whether a row without a mark under this option is not fitted: that is asked once a table. */
    private boolean matters(TableRead read, String option, Answers answers, List<Doubt> doubts) {
        Column first = valueColumns(read).stream()
                .filter(column -> option(column).equals(option))
                .findFirst()
                .orElseThrow();
        String at = read.table().address(read.table().firstHead(), first.at());
        Optional<String> answer = answers.at(at);
        if (answer.isEmpty() && doubts.stream().noneMatch(doubt -> doubt.at().equals(at))) {
            doubts.add(new Doubt(
                    at,
                    0,
                    true,
                    "some rows have no mark under '" + words(option)
                            + "' but under other options: are they fitted whichever" + " is chosen (" + ANY
                            + "), or not at all (" + NONE + ")?",
                    ANY));
        }
        return answer.map(NONE::equals).orElse(false);
    }

    /** Without options of which no value, or every one, stands there. */
    Map<String, List<String>> withoutAll(Map<String, List<String>> when) {
        Map<String, List<String>> left = new TreeMap<>();
        when.forEach((option, fitted) -> {
            boolean all = fitted.size() == choices(option).size();
            if (!fitted.isEmpty() && !all) {
                left.put(option, fitted);
            }
        });
        return left;
    }
}
