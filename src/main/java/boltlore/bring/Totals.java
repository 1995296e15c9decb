package boltlore.bring;

import boltlore.grid.GridCell;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Rows that add up those above them: known by their word, or by being the sum. What stands below the last one is not in it. */
final class Totals {

    private static final List<Role> ADDED = List.of(Role.QUANTITY, Role.VALUE, Role.TOTAL, Role.COST, Role.SHARE);

    /** A total and whether some figure of it was found to be the sum of the rows above. */
    private record Total(int row, boolean proved, boolean part) {}

    private final Table table;
    private final List<Column> columns;
    private final Relations relations;
    private final List<Total> totals = new ArrayList<>();
    private final Set<Integer> counted = new HashSet<>();
    private final Optional<Relations.Product> product;

    Totals(Table table, List<Column> columns, Relations relations) {
        this.table = table;
        this.columns = columns;
        this.relations = relations;
        List<Integer> prices = at(Role.COST);
        List<Integer> counts = new ArrayList<>(at(Role.PACK));
        counts.addAll(at(Role.QUANTITY));
        this.product = at(Role.TOTAL).stream()
                .flatMap(total -> relations.product(total, prices, counts).stream())
                .findFirst();
    }

    private List<Integer> at(Role role) {
        return columns.stream()
                .filter(column -> column.role() == role)
                .map(Column::at)
                .toList();
    }

    boolean isTotal(RowLook look) {
        boolean labelled = look.totalLabel().isPresent();
        boolean counts = look.counts();
        boolean plainly = look.totalLabel()
                .filter(label -> Words.isJust(Words.Saying.TOTAL, label))
                .isPresent();
        if (plainly && hasFigure(look)) {
            return true;
        }
        if (labelled && (!counts || isSum(look, Role.QUANTITY) || isSum(look, Role.VALUE))) {
            return !look.has(Role.NAME) || hasFigure(look);
        }
        return !look.isNamed() && ADDED.stream().anyMatch(role -> isSum(look, role));
    }

    private boolean hasFigure(RowLook look) {
        return ADDED.stream().anyMatch(look::has)
                || table.columns().anyMatch(column -> look.line().cell(column).number() != null);
    }

    private boolean isSum(RowLook look, Role role) {
        return look.cells(role).keySet().stream().anyMatch(column -> {
            BigDecimal number = relations.number(look.row(), column);
            return number != null
                    && number.signum() != 0
                    && (Relations.near(number, above(look.row(), column, true))
                            || Relations.near(number, above(look.row(), column, false)));
        });
    }

    /** The column's sum over the rows above, since the last total or from the beginning. */
    private BigDecimal above(int row, int column, boolean sinceLast) {
        int from =
                sinceLast && !totals.isEmpty() ? totals.get(totals.size() - 1).row() + 1 : table.firstRow();
        return table.lines().stream()
                .filter(line -> line.number() >= from && line.number() < row)
                .filter(line -> totals.stream().noneMatch(total -> total.row() == line.number()))
                .map(line -> relations.number(line.number(), column))
                .filter(number -> number != null)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Notes the total; one of quantities that is another than the sum of its rows is told. */
    void add(RowLook look, List<Entry> entries, List<Doubt> doubts) {
        boolean proved = ADDED.stream().anyMatch(role -> isSum(look, role));
        for (Role role : List.of(Role.QUANTITY, Role.VALUE)) {
            look.cells(role).forEach((column, cell) -> {
                BigDecimal said = relations.number(look.row(), column);
                BigDecimal sum = above(look.row(), column, false);
                if (said != null
                        && !Relations.near(said, sum)
                        && !Relations.near(said, above(look.row(), column, true))) {
                    doubts.add(new Doubt(
                            table.address(look.row(), column),
                            look.row(),
                            false,
                            "the total says " + said.toPlainString() + ", the rows above add up to "
                                    + sum.toPlainString(),
                            ""));
                }
            });
        }
        String label = look.totalLabel().map(Words::plain).orElse("");
        boolean part = label.startsWith("sub")
                || label.startsWith("zwischen")
                || label.startsWith("sous")
                || label.startsWith("小计");
        totals.add(new Total(look.row(), proved, part));
        entries.forEach(entry -> counted.add(entry.row()));
    }

    /** Parts below the last total are not in it: they are left out where their rows carry no total, else that is asked. */
    void below(List<Entry> entries, List<TableRead.Left> left, List<Doubt> doubts) {
        Optional<Total> last = totals.stream().filter(total -> !total.part()).reduce((one, other) -> other);
        if (last.isEmpty() || counted.isEmpty()) {
            return;
        }
        int total = last.get().row();
        List<Entry> after =
                entries.stream().filter(entry -> entry.row() > total).toList();
        boolean sums = entries.stream().filter(entry -> entry.row() < total).anyMatch(this::hasTotal);
        for (Entry entry : after) {
            boolean carries = !sums || hasTotal(entry);
            if (carries) {
                doubts.add(new Doubt(
                        table.address(entry.row(), at(Role.NAME).get(0)),
                        entry.row(),
                        true,
                        "'" + entry.name() + "' stands below the total in row " + total + ": is it needed?",
                        Answers.LEAVE_OUT));
            } else {
                left.add(new TableRead.Left(
                        entry.row(),
                        entry.fullName(),
                        "below the total in row " + total + ", which does not count it"));
            }
        }
        Set<Integer> dropped = after.stream()
                .filter(entry -> sums && !hasTotal(entry))
                .map(Entry::row)
                .collect(Collectors.toSet());
        entries.removeIf(entry -> dropped.contains(entry.row()));
        doubts.removeIf(doubt -> dropped.contains(doubt.row()));
    }

    private boolean hasTotal(Entry entry) {
        return !entry.text(Role.TOTAL).isEmpty();
    }

    /** Where totals are price times quantity, a row in which they are not has a slip in one of the three. */
    void product(RowLook look, List<Doubt> doubts) {
        product.ifPresent(columns -> {
            BigDecimal total = relations.number(look.row(), columns.total());
            BigDecimal price = relations.number(look.row(), columns.price());
            BigDecimal count = relations.number(look.row(), columns.quantity());
            boolean counts = at(Role.QUANTITY).contains(columns.quantity());
            if (total != null
                    && price != null
                    && count != null
                    && counts
                    && !Relations.near(total, price.multiply(count))) {
                GridCell cell = look.line().cell(columns.quantity());
                doubts.add(new Doubt(
                        table.address(look.row(), columns.quantity()),
                        look.row(),
                        true,
                        "quantity " + cell.text() + " times price " + price.toPlainString() + " is not the total "
                                + total.toPlainString() + ": which is wrong?",
                        cell.text()));
            }
        });
    }
}
