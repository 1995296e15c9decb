package boltlore.bring;

import boltlore.grid.Sheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What each column of a table is: by the words of its heading, by what its values look like, and by how the numbers of
 * columns follow from one another. Where heading and values disagree, the values are believed and the column is in doubt.
 */
final class ColumnRoles {

    /** Roles that several columns of a table may have. */
    private static final List<Role> MANY =
            List.of(Role.DESCRIPTION, Role.NOTE, Role.LINK, Role.DRAWING, Role.TOTAL, Role.LEFT, Role.DATE, Role.VALUE, Role.SHARE);

    /** Roles whose values are texts. */
    private static final List<Role> OF_TEXTS = List.of(
            Role.LINK,
            Role.DRAWING,
            Role.REFERENCE,
            Role.NAME,
            Role.DESCRIPTION,
            Role.GROUP,
            Role.UNIT,
            Role.MATERIAL,
            Role.FINISH,
            Role.NOTE,
            Role.SUPPLIER,
            Role.MAKER,
            Role.REVISION);

    private static final double SHORT = 45;

    private final Table table;
    private final Relations relations;
    private final TreeMap<Integer, Profile> profiles = new TreeMap<>();
    private final TreeMap<Integer, Words.Meaning> meanings = new TreeMap<>();
    private final TreeMap<Integer, Column> columns = new TreeMap<>();

    private ColumnRoles(Table table, Relations relations, boolean decimalComma) {
        this.table = table;
        this.relations = relations;
        table.columns().forEach(column -> {
            profiles.put(column, new Profile(table, column, decimalComma));
            Words.heading(table.heading(column)).ifPresent(meaning -> meanings.put(column, meaning));
        });
    }

    /** One column for each of the table's, from left to right. */
    static List<Column> of(Table table, Relations relations, boolean decimalComma) {
        return new ColumnRoles(table, relations, decimalComma).columns();
    }

    private List<Column> columns() {
        table.columns().forEach(this::byHeading);
        runningNumbers();
        shares();
        values();
        totals();
        oneOfEach();
        name();
        quantity();
        unread();
        return List.copyOf(columns.values());
    }

    private Profile profile(int column) {
        return profiles.get(column);
    }

    private Role role(int column) {
        return columns.get(column).role();
    }

    private void set(int column, Role role, boolean sure, String because) {
        columns.compute(column, (at, known) -> known.as(role, sure, because));
    }

    private List<Integer> with(Role role) {
        return columns.values().stream()
                .filter(column -> column.role() == role)
                .map(Column::at)
                .toList();
    }

    /** Columns whose heading says nothing. */
    private List<Integer> unnamed(Predicate<Profile> look) {
        return columns.values().stream()
                .filter(column -> column.role() == Role.LEFT && !meanings.containsKey(column.at()))
                .map(Column::at)
                .filter(column -> look.test(profile(column)))
                .toList();
    }

    /** Numbers under a heading that only holds a word for texts, such as the name of a drawing: that is no clue. */
    private void forget(int at) {
        Words.Meaning meaning = meanings.get(at);
        boolean misled = meaning != null
                && !meaning.whole()
                && OF_TEXTS.contains(meaning.role())
                && (profile(at).isNumeric() || profile(at).isMarks());
        if (misled) {
            meanings.remove(at);
        }
    }

    private void byHeading(int at) {
        forget(at);
        String heading = table.heading(at);
        Words.Meaning meaning = meanings.get(at);
        Profile profile = profile(at);
        Role role = meaning == null ? Role.LEFT : meaning.role();
        if (meaning == null && profile.isLinks()) {
            role = Role.LINK;
        }
        String because = meaning == null
                ? profile.isLinks() ? "its values are links" : "its heading is no known word"
                : meaning.whole() ? "its heading says so" : "its heading holds a word for it";
        columns.put(at, new Column(at, heading, role, "", "", meaning != null, because));
        boolean wordsUnderNumbers = profile.filled() > 0
                && switch (role) {
                    case QUANTITY, LEVEL, MASS, PACK, LEAD_DAYS -> profile.isText() && !profile.isMarks();
                    case TOTAL -> profile.isText() && profile.isCodes();
                    default -> false;
                };
        boolean numbersUnderWords = profile.isNumeric()
                && (role == Role.DESCRIPTION || role == Role.UNIT || role == Role.SUPPLIER || role == Role.NAME && profile.isRunning());
        if (role == Role.NAME && profile.isRunning()) {
            set(at, Role.ITEM, true, "its numbers run on from row to row");
        } else if (wordsUnderNumbers || numbersUnderWords) {
            set(at, Role.LEFT, false, "its heading says " + role.code() + ", its values do not look like it");
        }
    }

    /** Running numbers, texts and quantities go by the same few headings. */
    private void runningNumbers() {
        for (int at : List.copyOf(columns.keySet())) {
            Profile profile = profile(at);
            boolean named = !with(Role.NAME).isEmpty();
            if (role(at) == Role.ITEM && profile.isText() && !(named && !profile.isCodes())) {
                boolean codes = profile.isCodes() && with(Role.PART_NUMBER).isEmpty();
                set(at, codes ? Role.PART_NUMBER : named ? Role.ITEM : Role.NAME, true, "its values are " + (codes ? "codes" : "texts"));
            } else if (role(at) == Role.NUMBER) {
                boolean counts = !profile.isRunning() && profile.isNumeric() && with(Role.QUANTITY).isEmpty();
                Role role = counts ? Role.QUANTITY : profile.isText() && profile.isCodes() ? Role.PART_NUMBER : Role.ITEM;
                boolean words = role == Role.ITEM && profile.isText() && with(Role.QUANTITY).isEmpty();
                set(at, words ? Role.QUANTITY : role, true, "its heading says 'number', and so do its values");
            } else if (role(at) == Role.REFERENCE && profile.isRepeated()) {
                set(at, Role.GROUP, true, "the same few texts come back");
            } else if (role(at) == Role.PART_NUMBER && profile.isText() && !profile.isCodes() && with(Role.NAME).isEmpty()) {
                set(at, Role.NAME, true, "its values are names and no numbers");
            }
        }
    }

    /** A column that adds up its neighbours counts; they are shares of it. */
    private void shares() {
        for (List<Integer> run : Relations.runs(unnamed(profile -> profile.filled() == 0 || profile.isNumeric()))) {
            List<Integer> sums = columns.keySet().stream()
                    .filter(at -> !run.contains(at))
                    .filter(at -> List.of(Role.QUANTITY, Role.TOTAL, Role.LEFT).contains(role(at)))
                    .filter(at -> relations.isSum(at, run))
                    .toList();
            if (sums.size() == 1) {
                run.forEach(at -> set(at, Role.SHARE, true, "column " + Sheet.letters(sums.get(0)) + " adds it up"));
                set(sums.get(0), Role.QUANTITY, true, "it adds up the columns beside it");
            }
        }
    }

    /** Columns of marks or quantities, one for each value of an option. */
    private void values() {
        List<Integer> counted = with(Role.QUANTITY).stream()
                .filter(at -> !meanings.containsKey(at) ? false : !meanings.get(at).whole())
                .toList();
        if (counted.size() >= 2 && counted.size() == with(Role.QUANTITY).size()) {
            counted.forEach(at -> value(at, meanings.get(at).rest(), true));
        }
        List<Integer> marks = columns.keySet().stream()
                .filter(at -> profile(at).isMarks() && !table.heading(at).isEmpty())
                .filter(at -> role(at) == Role.LEFT || !meanings.get(at).whole() || !table.group(at).isEmpty())
                .toList();
        marks.forEach(at -> value(at, table.heading(at), true));
        boolean none = with(Role.QUANTITY).isEmpty();
        for (List<Integer> run : Relations.runs(unnamed(profile -> profile.isWhole() && !profile.isRunning()))) {
            boolean beside = run.stream().anyMatch(at -> marks.contains(at - 1) || marks.contains(at + 1));
            if (none && run.size() >= 2 || beside) {
                run.stream()
                        .filter(at -> !table.heading(at).isEmpty())
                        .forEach(at -> value(at, table.heading(at), table.sure()));
            }
        }
    }

    private void value(int at, String value, boolean sure) {
        String group = table.group(at);
        String option = group.isEmpty() || group.equals(value) ? "variant" : group;
        columns.compute(
                at, (key, known) -> known.valueOf(option, value, sure, "it holds a mark or a quantity for one value"));
    }

    private void totals() {
        List<Integer> counts = new ArrayList<>(with(Role.QUANTITY));
        counts.addAll(with(Role.VALUE));
        counts.addAll(with(Role.PACK));
        List<Integer> prices = with(Role.COST);
        for (int at : List.copyOf(columns.keySet())) {
            if (List.of(Role.COST, Role.TOTAL, Role.LEFT).contains(role(at)) && profile(at).isNumeric()) {
                relations.product(at, prices, counts).ifPresent(product ->
                        set(at, Role.TOTAL, true, "it is price times quantity"));
            }
        }
        if (with(Role.COST).size() > 1) {
            with(Role.COST).stream()
                    .filter(at -> profile(at).isCalculated())
                    .filter(at -> with(Role.COST).size() > 1)
                    .forEach(at -> set(at, Role.TOTAL, true, "it is calculated"));
        }
    }

    /** Of several columns for one thing, the one whose heading says it best counts. */
    private void oneOfEach() {
        Map<Role, List<Column>> byRole =
                columns.values().stream().collect(Collectors.groupingBy(Column::role, TreeMap::new, Collectors.toList()));
        byRole.forEach((role, all) -> {
            if (all.size() > 1 && !MANY.contains(role)) {
                Column best = all.stream()
                        .filter(column -> profile(column.at()).filled() > 0)
                        .min(Comparator.comparing((Column column) -> !says(column))
                                .thenComparing(Column::at))
                        .orElse(all.get(0));
                boolean rival = role == Role.QUANTITY
                        && all.stream().filter(column -> says(column) == says(best)).count() > 1;
                all.stream().filter(column -> column != best).forEach(column -> second(column, best));
                if (rival) {
                    set(best.at(), role, false, "more than one column counts");
                }
            }
        });
    }

    private boolean says(Column column) {
        return Optional.ofNullable(meanings.get(column.at()))
                .map(Words.Meaning::whole)
                .orElse(false);
    }

    private void second(Column column, Column best) {
        boolean sameHeading = !column.heading().isEmpty() && column.heading().equals(best.heading());
        if (column.role() == Role.NAME && sameHeading) {
            return;
        }
        boolean text = profile(column.at()).isText() && List.of(Role.NAME, Role.PART_NUMBER).contains(column.role());
        set(
                column.at(),
                text ? Role.DESCRIPTION : Role.LEFT,
                column.role() != Role.QUANTITY,
                "column " + Sheet.letters(best.at()) + " is the " + column.role().code());
    }

    private void name() {
        if (!with(Role.NAME).isEmpty()) {
            return;
        }
        Optional<Integer> described = with(Role.DESCRIPTION).stream()
                .filter(at -> profile(at).isText())
                .max(Comparator.comparing(at -> profile(at).distinct()));
        Optional<Integer> texts = unnamed(Profile::isText).stream()
                .filter(at -> profile(at).averageLength() > 3)
                .max(Comparator.comparing(at -> profile(at).distinct()));
        if (described.isPresent()) {
            set(described.get(), Role.NAME, true, "it is the only text that names the part");
        } else if (texts.isPresent()) {
            set(texts.get(), Role.NAME, false, "it has the most different texts");
        } else {
            with(Role.PART_NUMBER).stream()
                    .findFirst()
                    .ifPresent(at -> set(at, Role.NAME, true, "nothing else names the part"));
        }
    }

    private void quantity() {
        if (with(Role.QUANTITY).isEmpty() && with(Role.VALUE).isEmpty()) {
            List<Integer> wholes = unnamed(profile -> profile.isWhole() && !profile.isRunning());
            if (wholes.size() == 1) {
                set(wholes.get(0), Role.QUANTITY, false, "it holds the only whole numbers");
            }
        }
    }

    /** Texts beside a name that no heading explains belong to it; numbers that nothing explains are in doubt. */
    private void unread() {
        for (int at : unnamed(profile -> profile.filled() > 0)) {
            Profile profile = profile(at);
            if (profile.isText() && profile.averageLength() < SHORT && !with(Role.NAME).isEmpty()) {
                set(at, Role.NOTE, false, "its heading is no known word");
            }
        }
    }
}
