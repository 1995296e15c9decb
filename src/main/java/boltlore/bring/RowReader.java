package boltlore.bring;

import boltlore.grid.GridCell;
import boltlore.grid.Sheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads the rows of one table: which name parts, how many of each, and what each other row is. */
final class RowReader {

    private static final int LONGEST_HEADING = 80;

    /** Of which a dash says that there is none. */
    private static final List<Role> CODES = List.of(Role.PART_NUMBER, Role.ORDER_CODE, Role.MAKER_CODE);

    private final Table table;
    private final List<Column> columns;
    private final boolean decimalComma;
    private final Answers answers;
    private final Section section;
    private final List<RowLook> looks;
    private final Look usual;

    private final List<Entry> entries = new ArrayList<>();
    private final List<TableRead.Left> left = new ArrayList<>();
    private final List<Doubt> doubts = new ArrayList<>();
    private final Totals totals;
    private final RowAmounts amounts;

    /** How rows of parts look in this table, from which a heading differs. */
    private record Look(boolean bold, boolean capitals) {}

    RowReader(Table table, List<Column> columns, Relations relations, boolean decimalComma, Answers answers) {
        this.table = table;
        this.columns = columns;
        this.decimalComma = decimalComma;
        this.answers = answers;
        this.section = new Section(table);
        this.looks = table.lines().stream()
                .map(line -> new RowLook(table, columns, line))
                .toList();
        this.usual = usual();
        this.totals = new Totals(table, columns, relations);
        this.amounts = new RowAmounts(table, columns, decimalComma, answers, doubts);
    }

    private Look usual() {
        List<RowLook> parts =
                looks.stream().filter(look -> look.isNamed() && look.counts()).toList();
        long bold = parts.stream().filter(RowLook::isBold).count();
        long capitals =
                parts.stream().filter(look -> isCapitals(look.text(Role.NAME))).count();
        return new Look(bold * 2 > parts.size(), capitals * 3 > parts.size());
    }

    private static boolean isCapitals(String text) {
        return text.length() > 3
                && text.equals(text.toUpperCase(Locale.ROOT))
                && text.chars().filter(Character::isLetter).count() > 3;
    }

    TableRead read() {
        for (int i = 0; i < looks.size(); i++) {
            row(i);
        }
        totals.below(entries, left, doubts);
        columnDoubts();
        tableDoubts();
        doubts.removeIf(
                doubt -> answers.at(doubt.at()).isPresent() && !doubt.says().startsWith(Answers.NOT_UNDERSTOOD));
        doubts.sort(Comparator.comparing(Doubt::row));
        return new TableRead(
                table, decimalComma, columns, List.copyOf(entries), List.copyOf(left), List.copyOf(doubts));
    }

    private void row(int index) {
        RowLook look = looks.get(index);
        Optional<String> answer = answers.at(table.address(look.row(), nameColumn()));
        boolean out = table.columns()
                .anyMatch(at -> answers.at(table.address(look.row(), at))
                        .filter(Answers.LEAVE_OUT::equals)
                        .isPresent());
        if (out) {
            leave(look, "as answered");
        } else if (answer.isPresent() && answer.get().equals(Answers.HEADING)) {
            section.begin(look.shown());
            leave(look, "a heading, as answered");
        } else if (answer.isPresent()) {
            part(look);
        } else if (look.repeatsHeadings()) {
            leave(look, "the headings once more");
        } else if (totals.isTotal(look)) {
            totals.add(look, entries, doubts);
            leave(look, "a total");
        } else if (look.isStruck()) {
            leave(look, "struck through");
            doubt(look, nameColumn(), true, "the row is struck through: is it needed?", Answers.LEAVE_OUT);
        } else if (isHeading(look, index)) {
            section.begin(look.only().map(GridCell::text).orElse(""));
            leave(look, "a heading");
        } else if (!look.isNamed()) {
            unnamed(look);
        } else if (section.outside().isPresent()) {
            leave(look, section.outside().get());
        } else {
            part(look);
        }
    }

    private void leave(RowLook look, String because) {
        left.add(new TableRead.Left(look.row(), look.shown(), because));
    }

    private int nameColumn() {
        return columns.stream()
                .filter(column -> column.role() == Role.NAME)
                .map(Column::at)
                .findFirst()
                .orElse(table.firstColumn());
    }

    private void doubt(RowLook look, int column, boolean open, String says, String suggests) {
        String at = table.address(look.row(), column);
        if (answers.at(at).isEmpty()) {
            doubts.add(new Doubt(at, look.row(), open, says, suggests));
        }
    }

    /** A row with one text and nothing that counts. */
    private boolean isHeading(RowLook look, int index) {
        Optional<GridCell> only = look.only();
        if (only.isEmpty() || look.counts() || look.tells()) {
            return false;
        }
        String text = only.get().text();
        if (look.has(Role.PART_NUMBER) && text.matches("[^ ]*\\d[^ ]*")) {
            String says = "'" + text + "' stands alone: is it a heading, or the number of a part without a quantity?";
            doubt(look, nameColumn(), true, says, Answers.HEADING);
            return true;
        }
        boolean apart = look.isMerged()
                || (look.isOutsideOfNames() && !look.has(Role.DESCRIPTION))
                || (look.isBold() && !usual.bold())
                || text.endsWith(":")
                || (isCapitals(text) && !usual.capitals())
                || Section.isWord(text);
        if (apart || text.length() > LONGEST_HEADING) {
            return true;
        }
        boolean gap = (index == 0 || looks.get(index - 1).row() < look.row() - 1)
                && section.outside().isEmpty();
        if (gap && !look.line().hidden()) {
            doubt(
                    look,
                    nameColumn(),
                    true,
                    "'" + text + "' stands alone: is it a heading, or a part without a quantity?",
                    Answers.HEADING);
        }
        return gap;
    }

    private void unnamed(RowLook look) {
        boolean counts = look.counts() || look.has(Role.COST);
        leave(look, counts ? "numbers without a name" : "no name");
        if (look.counts()
                && look.cells(Role.QUANTITY).values().stream()
                        .anyMatch(cell -> cell.number() == null || cell.number().signum() != 0)) {
            doubt(look, nameColumn(), true, "numbers without a name: " + look.shown(), Answers.LEAVE_OUT);
        }
    }

    private void part(RowLook look) {
        Map<Role, String> texts = new EnumMap<>(Role.class);
        for (Role role : Role.values()) {
            String text = look.text(role);
            boolean none = CODES.contains(role) && Words.is(Words.Saying.BLANK, text);
            if (!text.isEmpty() && role != Role.LEFT && !none) {
                texts.put(role, text);
            }
        }
        boolean alternate = Words.says(Words.Saying.ALTERNATE, look.text(Role.PREFERENCE));
        dated(look, texts);
        Amount quantity = amounts.quantity(look);
        Entry entry = new Entry(look.row(), section.heading(), texts, quantity, amounts.values(look), alternate);
        if (look.line().hidden() && !table.sheet().filtered()) {
            String counted = quantity == null ? "" : quantity.number().toPlainString();
            doubt(look, nameColumn(), true, "the row is hidden: is it needed?", counted);
        }
        saysOutside(look);
        entries.add(entry);
        amounts.money(look);
        totals.product(look, doubts);
    }

    /** Programs make dates of numbers such as 1-2: what was typed is not in the file any more. */
    private void dated(RowLook look, Map<Role, String> texts) {
        look.cells(Role.PART_NUMBER).forEach((at, cell) -> {
            if (cell.kind() == GridCell.Kind.DATE) {
                answers.at(table.address(look.row(), at)).ifPresent(said -> texts.put(Role.PART_NUMBER, said));
                doubt(look, at, true, "'" + cell.text() + "' is a date: which number has the part?", "");
            }
        });
    }

    /** A cell that says nothing but that the part is not fitted. */
    private void saysOutside(RowLook look) {
        table.columns()
                .filter(at -> look.line().cell(at).isText()
                        && Words.isJust(
                                Words.Saying.OUTSIDE, look.line().cell(at).text()))
                .findFirst()
                .ifPresent(at -> doubt(
                        look,
                        at,
                        true,
                        "'" + look.text(Role.NAME) + "' is marked '"
                                + look.line().cell(at).text() + "': is it needed?",
                        Answers.LEAVE_OUT));
    }

    private void columnDoubts() {
        for (Column column : columns) {
            boolean vital = Brought.isVital(column);
            boolean numbers = column.role() == Role.LEFT
                    && table.lines().stream()
                            .anyMatch(line -> !line.cell(column.at()).isEmpty());
            String at = table.sheet().name() + '!' + Sheet.letters(column.at());
            if (numbers) {
                String says = "column '" + column.heading() + "' is not read: " + column.because();
                doubts.add(new Doubt(at, 0, false, says, Role.LEFT.code()));
            } else if (!column.sure()
                    && (vital || List.of(Role.NOTE, Role.PART_NUMBER).contains(column.role()))) {
                doubts.add(new Doubt(
                        at,
                        0,
                        vital,
                        "column '" + column.heading() + "' is taken for "
                                + column.role().code() + ": " + column.because(),
                        column.role().code()));
            }
        }
    }

    private void tableDoubts() {
        List<Sheet.Line> hidden = entries.stream()
                .map(entry -> table.sheet().rows().get(entry.row()))
                .filter(line -> line.hidden())
                .toList();
        if (table.sheet().filtered() && !hidden.isEmpty()) {
            doubts.add(new Doubt(
                    table.address(hidden.get(0).number(), nameColumn()),
                    0,
                    false,
                    "a filter hides rows of this sheet; all of them are read, " + hidden.size() + " hidden ones too",
                    ""));
        }
        boolean counts =
                columns.stream().anyMatch(column -> column.role() == Role.QUANTITY || column.role() == Role.VALUE);
        if (!counts && !entries.isEmpty()) {
            String at = table.address(table.firstHead(), table.firstColumn());
            if (answers.at(at).isEmpty()) {
                doubts.add(new Doubt(
                        at, 0, true, "the table has no column of quantities: is it needed?", Answers.LEAVE_OUT));
            }
        }
    }
}
