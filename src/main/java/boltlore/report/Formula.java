package boltlore.report;

import java.math.BigDecimal;
import java.util.List;

/**
 * A sum that stays live on the sheet, said in columns, groups and rows. It never holds text, so nothing from a catalogue
 * can become part of what a spreadsheet program works out.
 */
public sealed interface Formula {

    /** One cell. */
    record At(Place place) implements Formula {}

    /** A number that is written into the formula: a rate, a hundred. */
    record Fixed(BigDecimal number) implements Formula {}

    /** The column's plain rows of these groups of the formula's own table; with no group named, all plain rows. */
    record ColumnSum(String column, List<String> groups) implements Formula {
        public ColumnSum {
            groups = List.copyOf(groups);
        }
    }

    /** The column in the sub-totals of groups in the formula's own table; those across the groups do not count. */
    record SubtotalSum(String column) implements Formula {}

    /**
     * The column in those plain rows of a table whose text in the key column is, but for capitals, the text at a place:
     * a sum by make or buy across the groups.
     */
    record MatchSum(String page, String table, String column, String keyColumn, Place key) implements Formula {}

    record Sum(List<Formula> terms) implements Formula {
        public Sum {
            terms = List.copyOf(terms);
        }
    }

    record Difference(Formula from, Formula taken) implements Formula {}

    record Product(List<Formula> factors) implements Formula {
        public Product {
            factors = List.copyOf(factors);
        }
    }

    record Quotient(Formula dividend, Formula divisor) implements Formula {}

    /** Half up, away from zero, to that many digits after the decimal point. */
    record Rounded(Formula formula, int scale) implements Formula {}

    /** To the next whole number away from zero. */
    record RoundedUp(Formula formula) implements Formula {}

    /** The formulas that this one is made of. */
    default List<Formula> parts() {
        if (this instanceof Sum sum) {
            return sum.terms();
        } else if (this instanceof Product product) {
            return product.factors();
        } else if (this instanceof Difference difference) {
            return List.of(difference.from(), difference.taken());
        } else if (this instanceof Quotient quotient) {
            return List.of(quotient.dividend(), quotient.divisor());
        }
        if (this instanceof RoundedUp up) {
            return List.of(up.formula());
        }
        return this instanceof Rounded rounded ? List.of(rounded.formula()) : List.of();
    }

    /** The cell of the formula's own row. */
    static Formula cell(String column) {
        return cell("", column);
    }

    static Formula cell(String row, String column) {
        return cell("", row, column);
    }

    static Formula cell(String block, String row, String column) {
        return cell("", block, row, column);
    }

    static Formula cell(String page, String block, String row, String column) {
        return new At(new Place(page, block, row, column));
    }

    static Formula fixed(BigDecimal number) {
        return new Fixed(number);
    }

    static Formula sumOf(String column, String... groups) {
        return new ColumnSum(column, List.of(groups));
    }

    static Formula sumOfSubtotals(String column) {
        return new SubtotalSum(column);
    }

    /** The own table's plain rows whose text in the key column is the text that the formula's own row has there. */
    static Formula sumWhere(String column, String keyColumn) {
        return sumWhere("", "", column, keyColumn, new Place("", "", "", keyColumn));
    }

    static Formula sumWhere(String page, String table, String column, String keyColumn, Place key) {
        return new MatchSum(page, table, column, keyColumn, key);
    }

    static Formula sum(Formula... terms) {
        return new Sum(List.of(terms));
    }

    static Formula product(Formula... factors) {
        return new Product(List.of(factors));
    }

    default Formula minus(Formula taken) {
        return new Difference(this, taken);
    }

    default Formula over(Formula divisor) {
        return new Quotient(this, divisor);
    }

    default Formula roundedUp() {
        return new RoundedUp(this);
    }

    default Formula rounded(int scale) {
        return new Rounded(this, scale);
    }
}
