package boltlore.bring;

import boltlore.grid.GridCell;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** How many a row says, as far as it says it plainly; what it does not is a doubt. */
final class RowAmounts {

    /** More of one thing than a kit holds pieces of what is sold by length, mass or volume. */
    private static final BigDecimal MANY = BigDecimal.valueOf(50);

    private final Table table;
    private final List<Column> columns;
    private final boolean decimalComma;
    private final Answers answers;
    private final List<Doubt> doubts;

    RowAmounts(Table table, List<Column> columns, boolean decimalComma, Answers answers, List<Doubt> doubts) {
        this.table = table;
        this.columns = columns;
        this.decimalComma = decimalComma;
        this.answers = answers;
        this.doubts = doubts;
    }

    private void doubt(RowLook look, int column, boolean open, String says, String suggests) {
        String at = table.address(look.row(), column);
        if (answers.at(at).isEmpty()) {
            doubts.add(new Doubt(at, look.row(), open, says, suggests));
        }
    }

    private void notUnderstood(RowLook look, int column, String answer) {
        doubts.add(new Doubt(
                table.address(look.row(), column),
                look.row(),
                true,
                Answers.NOT_UNDERSTOOD + "'" + answer + "' is neither a quantity, such as 2 or 0.5 m, nor 'leave out'",
                ""));
    }

    @Nullable
    Amount quantity(RowLook look) {
        Optional<Column> column =
                columns.stream().filter(each -> each.role() == Role.QUANTITY).findFirst();
        if (column.isEmpty()) {
            return null;
        }
        int at = column.get().at();
        Optional<String> said = answers.at(table.address(look.row(), at));
        Optional<Amount> answered = said.or(
                        () -> answers.at(table.address(look.row(), Draft.column(columns, Role.NAME, table))))
                .flatMap(text -> Amount.of(text, text.contains(",")));
        if (answered.isPresent()) {
            return answered.get();
        }
        said.ifPresent(text -> notUnderstood(look, at, text));
        GridCell cell = look.line().cell(at);
        Optional<Amount> read = Amount.of(cell, decimalComma);
        if (cell.isEmpty()) {
            doubt(look, at, true, "'" + look.text(Role.NAME) + "' has no quantity", "");
        } else if (read.isEmpty()) {
            doubt(look, at, true, "the quantity '" + cell.text() + "' is no plain number", "");
        } else if (read.get().number().signum() < 0) {
            doubt(look, at, true, "the quantity is below 0", "");
            return null;
        } else {
            measured(look, at, read.get());
        }
        return read.orElse(null);
    }

    /** What is sold by length, mass or volume, and counted without saying in what. */
    private void measured(RowLook look, int at, Amount amount) {
        boolean bare = amount.unit().isEmpty() && look.text(Role.UNIT).isEmpty();
        if (amount.number().signum() == 0) {
            doubt(look, at, false, "'" + look.text(Role.NAME) + "' is not needed: its quantity is 0", "");
        }
        if (bare
                && amount.number().compareTo(MANY) > 0
                && Words.mentions(Words.Saying.MEASURED, look.text(Role.NAME))) {
            String name = look.text(Role.NAME);
            doubt(look, at, true, "'" + name + "' is counted without a unit: is that pieces, m, kg or l?", "");
        }
        GridCell cell = look.line().cell(at);
        if (bare && cell.isText() && cell.text().matches("\\d{1,3}[.,]\\d{3}")) {
            String says = "'" + cell.text() + "': do three digits follow a decimal sign or one of thousands?";
            doubt(look, at, true, says, "");
        }
    }

    SortedMap<Integer, Amount> values(RowLook look) {
        SortedMap<Integer, Amount> values = new TreeMap<>();
        columns.stream().filter(column -> column.role() == Role.VALUE).forEach(column -> {
            GridCell cell = look.line().cell(column.at());
            Optional<String> said = answers.at(table.address(look.row(), column.at()));
            String text = said.orElse(cell.text());
            Optional<Amount> read = said.isEmpty() && cell.kind() == GridCell.Kind.UNREAD
                    ? Optional.empty()
                    : Amount.of(text, decimalComma);
            if (Words.is(Words.Saying.MARK, text)) {
                values.put(column.at(), new Amount(BigDecimal.ONE, "mark"));
            } else if (read.isPresent()) {
                values.put(column.at(), read.get());
            } else if (text.isEmpty() || Words.is(Words.Saying.BLANK, text)) {
                values.put(column.at(), new Amount(BigDecimal.ZERO, ""));
            } else {
                said.ifPresent(answer -> notUnderstood(look, column.at(), answer));
                doubt(look, column.at(), true, "'" + text + "' is neither a mark nor a plain number", "");
            }
        });
        return values;
    }

    /** Prices and masses that cannot be read, and cells that a program could not fill. */
    void money(RowLook look) {
        for (Role role : List.of(Role.COST, Role.MASS, Role.LEAD_DAYS)) {
            look.cells(role).forEach((at, cell) -> {
                if (Amount.money(cell, decimalComma).isEmpty()
                        && Amount.of(cell, decimalComma).isEmpty()) {
                    doubt(
                            look,
                            at,
                            false,
                            "the " + role.code() + " '" + cell.text() + "' is no plain number, and not read",
                            "");
                }
            });
        }
        table.columns().forEach(at -> {
            if (look.line().cell(at).kind() == GridCell.Kind.UNREAD) {
                boolean counted = columns.stream()
                        .anyMatch(column ->
                                column.at() == at && (column.role() == Role.QUANTITY || column.role() == Role.VALUE));
                if (!counted) {
                    doubt(look, at, false, "not read: " + look.line().cell(at).text(), "");
                }
            }
        });
    }
}
