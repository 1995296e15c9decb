package boltlore.bring;

import boltlore.grid.GridCell;
import boltlore.grid.Sheet;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Headings of which no word is known: texts above numbers. */
final class TextRows {

    /** Rows that a sum adds up at least. */
    private static final int FEWEST_ADDED = 2;

    private final Sheet sheet;
    private final int first;
    private final int beyond;

    /** @param beyond one beyond the last column that is looked at */
    TextRows(Sheet sheet, int first, int beyond) {
        this.sheet = sheet;
        this.first = first;
        this.beyond = beyond;
    }

    /** The last row of several texts and hardly a number above a row with numbers below those texts. */
    Optional<Integer> last() {
        List<Integer> rows = new ArrayList<>(sheet.rows().keySet());
        Optional<Integer> last = Optional.empty();
        for (int i = 0; i + 1 < rows.size(); i++) {
            List<GridCell> here = filled(rows.get(i));
            long texts = here.stream().filter(TextRows::isWord).count();
            boolean above = texts >= 2 && texts * 3 >= here.size() * 2L && !hasNumberBelowText(rows, i);
            if (above && hasNumber(rows.get(i + 1))) {
                last = Optional.of(rows.get(i));
            } else if (last.isPresent() || (!above && texts > 1)) {
                return last;
            }
        }
        return last;
    }

    /** Whether this row is one like those below it, and no heading: a number stands in it where they have theirs. */
    private boolean hasNumberBelowText(List<Integer> rows, int at) {
        int row = rows.get(at);
        List<Integer> below = rows.subList(at + 1, Math.min(rows.size(), at + 6));
        return IntStream.range(first, beyond)
                .filter(column -> isNumber(sheet.cell(row, column)) && !isSumOfBelow(row, column))
                .anyMatch(column -> below.stream()
                                .filter(each -> isNumber(sheet.cell(each, column)))
                                .count()
                        > below.size() / 2);
    }

    /** Whether the number is the sum of some rows right below it. */
    private boolean isSumOfBelow(int row, int column) {
        BigDecimal number = sheet.cell(row, column).number();
        BigDecimal sum = BigDecimal.ZERO;
        int added = 0;
        for (Sheet.Line line : sheet.rows().tailMap(row, false).values()) {
            BigDecimal next = line.cell(column).number();
            if (next != null) {
                sum = sum.add(next);
                added++;
                if (added >= FEWEST_ADDED && number != null && Relations.near(number, sum)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean isNumber(GridCell cell) {
        return Amount.of(cell, false).isPresent() || Amount.of(cell, true).isPresent();
    }

    private static boolean isWord(GridCell cell) {
        return cell.isText() && !isNumber(cell);
    }

    private boolean hasNumber(int row) {
        return filled(row).stream().anyMatch(TextRows::isNumber);
    }

    /** Whether these cells hold a name and a number at least. */
    static boolean isData(List<GridCell> cells) {
        return cells.stream().anyMatch(TextRows::isNumber) && cells.stream().anyMatch(TextRows::isWord);
    }

    private List<GridCell> filled(int row) {
        return IntStream.range(first, beyond)
                .mapToObj(column -> sheet.cell(row, column))
                .filter(cell -> !cell.isEmpty())
                .toList();
    }
}
