package boltlore.json;

import java.math.BigDecimal;

/**
 * The numbers that make sense in one place.
 *
 * @param least smallest number allowed
 * @param leastItself whether the smallest number itself is allowed
 * @param most largest number allowed, itself included
 */
public record Range(BigDecimal least, boolean leastItself, BigDecimal most) implements Shape {

    /** Digits after the point that are kept at most; more is a slip or the dust of a conversion. */
    static final int MOST_DECIMALS = 9;

    private static final BigDecimal MOST = new BigDecimal("1000000000");

    /** Above 0, up to a thousand million. */
    public static final Range POSITIVE = new Range(BigDecimal.ZERO, false, MOST);

    /** From 0 up to a thousand million. */
    public static final Range NOT_NEGATIVE = new Range(BigDecimal.ZERO, true, MOST);

    /** How many of a part a line, an assembly or a need may ask for. */
    public static final Range QUANTITY = above(0, 10_000);

    public static Range between(long least, long most) {
        return new Range(BigDecimal.valueOf(least), true, BigDecimal.valueOf(most));
    }

    public static Range above(long least, long most) {
        return new Range(BigDecimal.valueOf(least), false, BigDecimal.valueOf(most));
    }

    boolean holds(BigDecimal number) {
        int compared = number.compareTo(least);
        return (leastItself ? compared >= 0 : compared > 0)
                && number.compareTo(most) <= 0
                && (number.scale() <= MOST_DECIMALS
                        || number.stripTrailingZeros().scale() <= MOST_DECIMALS);
    }

    String expected() {
        return "a number " + says() + ", such as \"12.5\"";
    }

    private String says() {
        return (leastItself ? "from " : "above ")
                + least.toPlainString()
                + (leastItself ? " to " : ", at most ")
                + most.toPlainString();
    }
}
