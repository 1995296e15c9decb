package boltlore.checkvalues;

import java.math.BigDecimal;
import java.util.Map;

/** One row of a table of check values, by column name; prints its number, what is checked, and where it comes from. */
public record CheckRow(Map<String, String> cells) {

    public String text(String column) {
        String cell = cells.get(column);
        if (cell == null) {
            throw new IllegalArgumentException("No column " + column);
        }
        return cell;
    }

    public boolean has(String column) {
        return !text(column).isEmpty();
    }

    public BigDecimal number(String column) {
        return new BigDecimal(text(column));
    }

    /** The number, or the other where the cell is empty. */
    public BigDecimal numberOr(String column, BigDecimal other) {
        return has(column) ? number(column) : other;
    }

    /** What kind of source it is, in words. */
    private String standing() {
        return switch (text("mark")) {
            case "practice" -> "common practice, no source";
            case "memory" -> "from memory: " + text("source_title");
            case "computed" -> "computed from: " + text("source_title");
            default -> text("source_title");
        };
    }

    @Override
    public String toString() {
        return text("id") + " " + text("check") + " [" + standing() + "]";
    }
}
