package boltlore.bring;

import boltlore.grid.GridCell;
import boltlore.grid.Sheet;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What the values of a column look like, counted over the rows of its table. */
final class Profile {

    private static final int LONGEST_MARK = 3;

    /** As many numbers may be missing from a running row of them, beside every second one. */
    private static final int FEW = 5;

    private final int filled;
    private int numbers;
    private int wholes;
    private int marks;
    private int blanks;
    private int links;
    private int codes;
    private int formulas;
    private int money;
    private int padded;
    private int rising;
    private int letters;
    private int designators;
    private @Nullable BigDecimal before;
    private final Set<String> distinct = new HashSet<>();

    Profile(Table table, int column, boolean decimalComma) {
        List<GridCell> cells = new ArrayList<>();
        for (Sheet.Line line : table.lines()) {
            GridCell cell = line.cell(column);
            if (!cell.isEmpty()) {
                cells.add(cell);
            }
        }
        filled = cells.size();
        for (GridCell cell : cells) {
            String text = cell.text();
            distinct.add(text);
            letters += text.length();
            formulas += cell.formula() ? 1 : 0;
            padded += text.matches("0\\d{3,}") ? 1 : 0;
            links += text.startsWith("http") || text.startsWith("www.") ? 1 : 0;
            boolean sign = Words.is(Words.Saying.MARK, text);
            marks += sign ? 1 : 0;
            blanks += Words.is(Words.Saying.BLANK, text) && cell.number() == null ? 1 : 0;
            BigDecimal plain = Amount.of(cell, decimalComma).map(Amount::number).orElse(null);
            BigDecimal number =
                    plain != null ? plain : Amount.money(cell, decimalComma).orElse(null);
            money += plain == null && number != null ? 1 : 0;
            designators += text.matches("[A-Z]{1,3}\\d+([ ,;-]+[A-Z]{1,3}\\d+)*") ? 1 : 0;
            if (number != null) {
                numbers++;
                wholes += number.stripTrailingZeros().scale() <= 0 ? 1 : 0;
                rising += before == null || number.compareTo(before) > 0 ? 1 : 0;
                before = number;
            }
            codes += isCode(text) ? 1 : 0;
        }
    }

    /** Letters and digits without a blank, as numbers of parts are. */
    private static boolean isCode(String text) {
        return text.length() >= 3
                && text.matches("[\\p{ASCII}&&[^ ]]+")
                && text.chars().anyMatch(Character::isDigit);
    }

    int filled() {
        return filled;
    }

    boolean isNumeric() {
        return filled > 0 && numbers * 10 >= filled * 7;
    }

    boolean isText() {
        return filled > 0 && numbers * 2 < filled;
    }

    boolean isLinks() {
        return filled > 0 && links * 2 > filled;
    }

    boolean isCodes() {
        return codes > 0 && codes * 10 >= (filled - blanks) * 6;
    }

    /** Places on a circuit board: C1, C2. */
    boolean isDesignators() {
        return filled > 0 && designators * 10 >= filled * 8;
    }

    /** Numbers with the sign of a currency. */
    boolean isMoney() {
        return filled > 0 && money * 2 > filled;
    }

    /** Digits behind noughts, as 0012: numbers that something is known by, and neither counts nor quantities. */
    boolean isPadded() {
        return padded > 0;
    }

    /** Whole numbers that grow from row to row, as running numbers do. */
    boolean isRunning() {
        boolean dense = before != null && before.compareTo(BigDecimal.valueOf(2L * filled + FEW)) <= 0;
        return filled >= 3 && wholes == filled && rising * 10 >= filled * 9 && dense;
    }

    boolean isWhole() {
        return isNumeric() && wholes * 10 >= filled * 8;
    }

    /** Marks, with signs for 'not' and here and there a number. */
    boolean isMarks() {
        return marks > 0
                && (marks + blanks + numbers) * 10 >= filled * 7
                && marks * 2 >= numbers
                && letters <= filled * LONGEST_MARK * 2;
    }

    /** Whether the same few texts come back again and again, as names of groups do. */
    boolean isRepeated() {
        return filled >= 4 && distinct.size() * 2 <= filled;
    }

    boolean isCalculated() {
        return filled > 0 && formulas * 2 > filled;
    }

    double averageLength() {
        return filled == 0 ? 0 : (double) letters / filled;
    }

    int distinct() {
        return distinct.size();
    }
}
