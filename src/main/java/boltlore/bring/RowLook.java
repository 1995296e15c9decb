package boltlore.bring;

import boltlore.grid.GridCell;
import boltlore.grid.Sheet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One row of a table, seen through what its columns are. */
final class RowLook {

    private static final List<Role> NAMING =
            List.of(Role.NAME, Role.DESCRIPTION, Role.PART_NUMBER, Role.ORDER_CODE, Role.MAKER_CODE);
    private static final List<Role> TELLING = List.of(
            Role.PART_NUMBER,
            Role.SUPPLIER,
            Role.ORDER_CODE,
            Role.MAKER,
            Role.MAKER_CODE,
            Role.COST,
            Role.UNIT,
            Role.MASS,
            Role.DRAWING,
            Role.LINK,
            Role.PACK,
            Role.LEVEL,
            Role.REFERENCE);
    private static final int LONGEST_LABEL = 45;
    private static final int LONGEST_MARK = 8;
    private static final int FEWEST_MERGED = 3;

    private final Table table;
    private final Map<Integer, Column> columns;
    private final Sheet.Line line;

    RowLook(Table table, List<Column> columns, Sheet.Line line) {
        this.table = table;
        this.columns = columns.stream().collect(Collectors.toMap(Column::at, column -> column));
        this.line = line;
    }

    int row() {
        return line.number();
    }

    Sheet.Line line() {
        return line;
    }

    private Stream<Column> with(Role role) {
        return columns.values().stream().filter(column -> column.role() == role);
    }

    /** The cells of that kind with something in them, by column. */
    SortedMap<Integer, GridCell> cells(Role role) {
        SortedMap<Integer, GridCell> cells = new TreeMap<>();
        with(role).forEach(column -> {
            GridCell cell = line.cell(column.at());
            if (!cell.isEmpty()) {
                cells.put(column.at(), cell);
            }
        });
        return cells;
    }

    String text(Role role) {
        return cells(role).values().stream()
                .filter(cell -> cell.kind() != GridCell.Kind.UNREAD)
                .map(GridCell::text)
                .distinct()
                .collect(Collectors.joining(role == Role.NAME || role == Role.DESCRIPTION ? ", " : "; "));
    }

    boolean has(Role role) {
        return !cells(role).isEmpty();
    }

    /** A value that nobody could read is one all the same. */
    private static boolean isUnread(GridCell cell) {
        return cell.kind() == GridCell.Kind.UNREAD;
    }

    boolean isNamed() {
        return NAMING.stream().anyMatch(this::has);
    }

    private List<GridCell> texts() {
        return table.columns().mapToObj(line::cell).filter(GridCell::isText).toList();
    }

    /** Whether some cell counts something, shares and labels aside. */
    boolean counts() {
        boolean quantity = cells(Role.QUANTITY).values().stream()
                .anyMatch(cell -> isUnread(cell) || cell.text().chars().anyMatch(Character::isDigit));
        return quantity
                || cells(Role.VALUE).values().stream()
                        .anyMatch(cell ->
                                isUnread(cell) || cell.text().length() <= LONGEST_MARK || cell.number() != null);
    }

    /** Whether the row says anything of a part beside a name. */
    boolean tells() {
        return TELLING.stream()
                .filter(role -> role != namingRole())
                .anyMatch(role -> cells(role).values().stream().anyMatch(cell -> !(cell.formula() && isZero(cell))));
    }

    private Role namingRole() {
        return NAMING.stream().filter(this::has).findFirst().orElse(Role.NAME);
    }

    private static boolean isZero(GridCell cell) {
        return cell.number() != null && cell.number().signum() == 0;
    }

    /** The label that makes the row one of totals. */
    Optional<String> totalLabel() {
        return texts().stream()
                .filter(cell -> cell.text().length() <= LONGEST_LABEL && Words.says(Words.Saying.TOTAL, cell.text()))
                .map(GridCell::text)
                .findFirst();
    }

    /** The row's only text, where it has just one, or the same one in all cells of a merged block. */
    Optional<GridCell> only() {
        List<GridCell> texts = texts();
        return texts.stream().map(GridCell::text).distinct().count() == 1
                ? Optional.of(texts.get(0))
                : Optional.empty();
    }

    int onlyColumn() {
        return table.columns()
                .filter(column -> line.cell(column).isText())
                .findFirst()
                .orElse(-1);
    }

    boolean isMerged() {
        return table.sheet()
                .mergedAt(row(), onlyColumn())
                .map(block -> block.lastColumn() - block.firstColumn() + 1 >= FEWEST_MERGED)
                .orElse(false);
    }

    boolean isOutsideOfNames() {
        return with(Role.NAME).noneMatch(column -> column.at() == onlyColumn());
    }

    boolean isBold() {
        return texts().stream().anyMatch(cell -> cell.face().bold());
    }

    boolean isStruck() {
        List<GridCell> texts = texts();
        return !texts.isEmpty() && texts.stream().allMatch(cell -> cell.face().struck());
    }

    /** Whether it says again what the headings say. */
    boolean repeatsHeadings() {
        long same = columns.values().stream()
                .filter(column -> !column.heading().isEmpty())
                .filter(column -> line.cell(column.at()).text().equals(column.heading()))
                .count();
        return same >= 2 && same * 2 >= texts().size();
    }

    /** What it says, for a sentence. */
    String shown() {
        String all = table.columns()
                .mapToObj(line::cell)
                .filter(cell -> !cell.isEmpty())
                .map(GridCell::text)
                .distinct()
                .collect(Collectors.joining(" | "));
        return all.length() > 70 ? all.substring(0, 69) + "…" : all;
    }
}
