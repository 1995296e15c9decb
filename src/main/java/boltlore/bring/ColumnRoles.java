package boltlore.bring;

import boltlore.grid.Sheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What each column of a table is: by the words of its heading, by what its values look like, and by how the numbers of
 * columns follow from one another. Where heading and values disagree, the values are believed and the column is in doubt.
 */
final class ColumnRoles {

    /** Roles that several columns of a table may have. */
    private static final List<Role> MANY = List.of(
            Role.DESCRIPTION,
            Role.NOTE,
            Role.LINK,
            Role.DRAWING,
            Role.TOTAL,
            Role.LEFT,
            Role.DATE,
            Role.VALUE,
            Role.SHARE);

    private static final double SHORT = 45;

    private final Table table;
    private final Relations relations;
    private final ColumnsSoFar known;
    private final SortedMap<Integer, Words.Meaning> meanings;
    private final SortedMap<Integer, Column> columns;

    private ColumnRoles(Table table, Relations relations, boolean decimalComma) {
        this.table = table;
        this.relations = relations;
        this.known = new ColumnsSoFar(table, decimalComma);
        this.meanings = known.meanings();
        this.columns = known.columns();
    }

    /** One column for each of the table's, from left to right. */
    static List<Column> of(Table table, Relations relations, boolean decimalComma) {
        return new ColumnRoles(table, relations, decimalComma).columns();
    }

    private List<Column> columns() {
        new HeadingRoles(table, known).take();
        shares();
        values();
        totals();
        oneOfEach();
        name();
        quantity();
        cost();
        unread();
        return List.copyOf(columns.values());
    }

    /** A column that adds up its neighbours counts; they are shares of it. */
    private void shares() {
        for (List<Integer> run :
                Relations.runs(known.unnamed(profile -> profile.filled() == 0 || profile.isNumeric()))) {
            List<Integer> sums = columns.keySet().stream()
                    .filter(at -> !run.contains(at))
                    .filter(at -> List.of(Role.QUANTITY, Role.TOTAL, Role.LEFT).contains(known.role(at)))
                    .filter(at -> relations.isSum(at, run))
                    .toList();
            if (sums.size() == 1) {
                run.forEach(
                        at -> known.set(at, Role.SHARE, true, "column " + Sheet.letters(sums.get(0)) + " adds it up"));
                known.set(sums.get(0), Role.QUANTITY, true, "it adds up the columns beside it");
            }
        }
    }

    /** Columns of marks or quantities, one for each value of an option. */
    private void values() {
        List<Integer> counted = known.with(Role.QUANTITY).stream()
                .filter(at -> meanings.containsKey(at) && !known.isWhole(at))
                .toList();
        if (counted.size() >= 2 && counted.size() == known.with(Role.QUANTITY).size()) {
            counted.forEach(at -> value(at, known.rest(at), true));
        }
        List<Integer> marks = columns.keySet().stream()
                .filter(at -> known.profile(at).isMarks() && !table.heading(at).isEmpty())
                .filter(at -> !known.isTicked(at))
                .filter(at -> known.role(at) == Role.LEFT
                        || !known.isWhole(at)
                        || !table.group(at).isEmpty())
                .toList();
        marks.forEach(at -> value(at, table.heading(at), true));
        boolean none = known.with(Role.QUANTITY).isEmpty();
        for (List<Integer> run : Relations.runs(
                known.unnamed(profile -> profile.isWhole() && !profile.isRunning() && !profile.isMoney()))) {
            boolean beside = run.stream().anyMatch(at -> marks.contains(at - 1) || marks.contains(at + 1));
            if ((none && run.size() >= 2) || beside) {
                run.stream()
                        .filter(at -> !table.heading(at).isEmpty())
                        .forEach(at -> value(at, table.heading(at), table.sure()));
            }
        }
        extras();
        if (known.with(Role.VALUE).size() == 1) {
            int only = known.with(Role.VALUE).get(0);
            known.set(only, Role.VALUE, false, "it holds marks, and no other column does: one value is no choice");
        }
    }

    /** Marks beside rows that have none: such columns seldom stand for values of which each order has one. */
    private void extras() {
        List<Integer> all = known.with(Role.VALUE);
        boolean marks = all.size() > 1
                && all.stream()
                        .allMatch(at ->
                                known.profile(at).isMarks() && table.group(at).isEmpty());
        boolean unmarked = table.lines().stream()
                .anyMatch(line -> all.stream().allMatch(at -> line.cell(at).isEmpty())
                        && known.with(Role.QUANTITY).stream()
                                .anyMatch(at -> !line.cell(at).isEmpty())
                        && known.with(Role.NAME).stream()
                                .anyMatch(at -> !line.cell(at).isEmpty()));
        if (marks && unmarked) {
            all.forEach(at -> known.set(
                    at,
                    Role.VALUE,
                    false,
                    "some rows have no mark: is one of these chosen, as said here, or each by itself? Then give each its"
                            + " own 'option'"));
        }
    }

    private void value(int at, String value, boolean sure) {
        String group = table.group(at);
        String option = group.isEmpty() || group.equals(value) ? "variant" : group;
        columns.compute(
                at, (key, known) -> known.valueOf(option, value, sure, "it holds a mark or a quantity for one value"));
    }

    private void totals() {
        List<Integer> counts = new ArrayList<>(known.with(Role.QUANTITY));
        counts.addAll(known.with(Role.VALUE));
        counts.addAll(known.with(Role.PACK));
        List<Integer> prices = known.with(Role.COST);
        for (int at : List.copyOf(columns.keySet())) {
            if (List.of(Role.COST, Role.TOTAL, Role.LEFT).contains(known.role(at))
                    && known.profile(at).isNumeric()) {
                relations
                        .product(at, prices, counts)
                        .ifPresent(product -> known.set(at, Role.TOTAL, true, "it is price times quantity"));
            }
        }
        if (known.with(Role.COST).size() > 1) {
            known.with(Role.COST).stream()
                    .filter(at -> known.profile(at).isCalculated())
                    .filter(at -> known.with(Role.COST).size() > 1)
                    .forEach(at -> known.set(at, Role.TOTAL, true, "it is calculated"));
        }
    }

    /** Of several columns for one thing, the one whose heading says it best counts. */
    private void oneOfEach() {
        Map<Role, List<Column>> byRole = columns.values().stream()
                .collect(Collectors.groupingBy(Column::role, TreeMap::new, Collectors.toList()));
        byRole.forEach((role, all) -> {
            if (all.size() > 1 && !MANY.contains(role)) {
                Column best = all.stream()
                        .filter(column -> known.profile(column.at()).filled() > 0)
                        .min(Comparator.comparing((Column column) -> !says(column))
                                .thenComparing(Column::at))
                        .orElse(all.get(0));
                boolean rival = role == Role.QUANTITY
                        && all.stream()
                                        .filter(column -> says(column) == says(best))
                                        .count()
                                > 1;
                all.stream().filter(column -> column.at() != best.at()).forEach(column -> second(column, best));
                if (rival) {
                    known.set(best.at(), role, false, "more than one column counts");
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
        boolean text = known.profile(column.at()).isText()
                && List.of(Role.NAME, Role.PART_NUMBER).contains(column.role());
        known.set(
                column.at(),
                text ? Role.DESCRIPTION : Role.LEFT,
                column.role() != Role.QUANTITY,
                "column " + Sheet.letters(best.at()) + " is the "
                        + column.role().code());
    }

    private void name() {
        if (!known.with(Role.NAME).isEmpty()) {
            return;
        }
        Optional<Integer> described = known.with(Role.DESCRIPTION).stream()
                .filter(at -> known.profile(at).isText())
                .max(Comparator.comparing(at -> known.profile(at).distinct()));
        Optional<Integer> texts = known.unnamed(Profile::isText).stream()
                .filter(at -> known.profile(at).averageLength() > 3)
                .max(Comparator.comparing(at -> known.profile(at).distinct()));
        if (described.isPresent()) {
            known.set(described.get(), Role.NAME, true, "it is the only text that names the part");
        } else if (texts.isPresent()) {
            known.set(texts.get(), Role.NAME, false, "it has the most different texts");
        } else {
            known.with(Role.PART_NUMBER).stream()
                    .findFirst()
                    .ifPresent(at -> known.set(at, Role.NAME, true, "nothing else names the part"));
        }
    }

    private void quantity() {
        if (known.with(Role.QUANTITY).isEmpty() && known.with(Role.VALUE).isEmpty()) {
            List<Integer> wholes = known.unnamed(profile -> profile.isWhole() && !profile.isRunning());
            if (wholes.size() == 1) {
                known.set(wholes.get(0), Role.QUANTITY, false, "it holds the only whole numbers");
            }
        }
    }

    /** The only amounts of money are what a part costs, whatever their heading says: that is asked. */
    private void cost() {
        List<Integer> money = known.unnamed(Profile::isMoney);
        if (known.with(Role.COST).isEmpty() && money.size() == 1) {
            known.set(money.get(0), Role.COST, false, "it holds the only amounts of money");
        }
    }

    /** Right of a column with neither heading nor values: what stands there belongs to something else. */
    private boolean isBeyondGap(int at) {
        int name = known.with(Role.NAME).stream().findFirst().orElse(at);
        return columns.keySet().stream()
                .filter(between -> between > name && between < at)
                .anyMatch(this::isGap);
    }

    private boolean isGap(int at) {
        return table.heading(at).isEmpty() && known.profile(at).filled() == 0;
    }

    /** A column and those right of it, up to the next empty one. */
    private void leaveStrip(int from) {
        columns.keySet().stream()
                .filter(at -> at >= from)
                .takeWhile(at -> !isGap(at))
                .toList()
                .forEach(at -> known.set(
                        at, Role.LEFT, false, "it stands beyond an empty column, under '" + table.heading(from) + "'"));
    }

    /** Texts beside a name that no heading explains belong to it; numbers that nothing explains are in doubt. */
    private void unread() {
        for (int at : known.unnamed(profile -> profile.filled() > 0)) {
            Profile profile = known.profile(at);
            if (profile.isText() && isBeyondGap(at)) {
                leaveStrip(at);
            } else if (profile.isText()
                    && profile.averageLength() < SHORT
                    && !known.with(Role.NAME).isEmpty()) {
                known.set(at, Role.NOTE, false, "its heading is no known word");
            }
        }
    }
}
