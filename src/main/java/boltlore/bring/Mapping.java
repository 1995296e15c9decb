package boltlore.bring;

import boltlore.grid.Sheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How a list is read: proposed by the program, edited by people, kept beside the list. What is in doubt stands in it as
 * {@link #OPEN} until somebody has put an answer in its place.
 *
 * @param family the name that the family and its files get
 * @param encoding of a CSV file, where it is known; else empty
 * @param missing what parts need and the list does not say, by its key in the catalogue
 */
public record Mapping(
        String family, String encoding, Map<String, String> missing, List<Tabled> tables, List<Asked> answers) {

    /** Stands where an answer is awaited. */
    public static final String OPEN = "?";

    /**
     * How a table is read.
     *
     * @param head sheet and cell where its headings begin
     * @param read whether it is brought in
     */
    public record Tabled(String head, boolean read, List<Use> columns) {}

    /**
     * What a column is.
     *
     * @param column its letters
     * @param option where it is a value, the option and the value in the list's own words
     * @param asked whether it waits for somebody to say that it is right
     */
    public record Use(
            String column, String heading, Role is, String option, String value, boolean asked, String because) {}

    /**
     * One question about a cell or a row.
     *
     * @param asks the question
     * @param is {@link #OPEN}, or the answer
     */
    public record Asked(String at, String asks, String likely, String is) {

        boolean isOpen() {
            return is.equals(OPEN);
        }
    }

    /** A mapping that says nothing yet. */
    static Mapping empty(String family) {
        return new Mapping(family, "", Map.of(), List.of(), List.of());
    }

    Answers given() {
        Map<String, String> given = new LinkedHashMap<>();
        answers.stream().filter(asked -> !asked.isOpen()).forEach(asked -> given.put(asked.at(), asked.is()));
        return new Answers(given);
    }

    Optional<Tabled> of(Table table) {
        String head = table.address(table.firstHead(), table.firstColumn());
        return tables.stream().filter(each -> each.head().equals(head)).findFirst();
    }

    /** The columns as the mapping has them, where it knows the table. */
    List<Column> columns(Table table, List<Column> proposed) {
        Optional<Tabled> known = of(table);
        return proposed.stream()
                .map(column -> known.flatMap(tabled -> use(tabled, column)).orElse(column))
                .toList();
    }

    private static Optional<Column> use(Tabled tabled, Column column) {
        return tabled.columns().stream()
                .filter(use -> use.column().equals(Sheet.letters(column.at())))
                .filter(use -> use.heading().equals(column.heading()))
                .findFirst()
                .map(use -> new Column(
                        column.at(),
                        column.heading(),
                        use.is(),
                        use.option(),
                        use.value(),
                        !use.asked(),
                        use.because()));
    }

    /**
     * A question that is still open.
     *
     * @param at where its answer stands: a cell, a column, or the key of what is missing
     * @param likely the answer that 'yes' stands for, or empty
     */
    public record Open(String at, String asks, String likely) {

        @Override
        public String toString() {
            return at + ": " + asks;
        }
    }

    private static final String OF_MISSING = "missing/";

    /** What is still open, first what is missing, then columns, then rows. */
    public List<Open> questions() {
        List<Open> open = new ArrayList<>();
        missing.forEach((key, value) -> {
            if (value.equals(OPEN)) {
                open.add(new Open(OF_MISSING + key, Missing.asks(key), ""));
            }
        });
        for (Tabled table : tables) {
            table.columns().stream()
                    .filter(use -> table.read() && use.asked())
                    .forEach(use -> open.add(new Open(
                            at(table, use),
                            "column '" + use.heading() + "' is taken for "
                                    + use.is().code() + ": " + use.because(),
                            use.is().code())));
        }
        answers.stream()
                .filter(Asked::isOpen)
                .forEach(asked -> open.add(new Open(asked.at(), asked.asks(), asked.likely())));
        return open;
    }

    private static String at(Tabled table, Use use) {
        return table.head().substring(0, table.head().lastIndexOf('!') + 1) + use.column();
    }

    /** What is still open, as sentences with where each stands. */
    public List<String> open() {
        return questions().stream().map(Open::toString).toList();
    }

    /** The mapping with this answer in it; 'yes' stands for what is likely. */
    public Mapping answered(Open open, String answer) {
        String said = answer.equals("yes") && !open.likely().isEmpty() ? open.likely() : answer;
        Map<String, String> known = new LinkedHashMap<>(missing);
        if (open.at().startsWith(OF_MISSING) && known.containsKey(open.at().substring(OF_MISSING.length()))) {
            known.put(open.at().substring(OF_MISSING.length()), said);
        }
        List<Asked> rows = answers.stream()
                .map(asked -> asked.at().equals(open.at())
                        ? new Asked(asked.at(), asked.asks(), asked.likely(), said)
                        : asked)
                .toList();
        List<Tabled> columns = tables.stream()
                .map(table -> new Tabled(
                        table.head(),
                        table.read(),
                        table.columns().stream()
                                .map(use -> use.asked() && at(table, use).equals(open.at()) ? settled(use, said) : use)
                                .toList()))
                .toList();
        return new Mapping(family, encoding, known, columns, rows);
    }

    private static Use settled(Use use, String said) {
        Role role = Role.of(said).orElse(use.is());
        boolean sure = Role.of(said).isPresent();
        return new Use(use.column(), use.heading(), role, use.option(), use.value(), !sure, "as answered");
    }
}
