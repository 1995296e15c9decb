package boltlore.trades.testing;

import boltlore.catalogue.FoundState;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** What a reading is held against; numbers in the unit of the row's result. */
public sealed interface Limit {

    record AtLeast(BigDecimal least) implements Limit {}

    record AtMost(BigDecimal most) implements Limit {}

    /** The limit itself fails. */
    record Below(BigDecimal bound) implements Limit {}

    /** Both ends included. */
    record Between(BigDecimal least, BigDecimal most) implements Limit {}

    record InState(FoundState state) implements Limit {}

    /** No limit can be worked out, so no reading passes. */
    record Unknown(NotKnown what) implements Limit {}

    /** The number that it begins at; null where it has none. */
    default @Nullable BigDecimal leastNumber() {
        return this instanceof AtLeast atLeast
                ? atLeast.least()
                : this instanceof Between between ? between.least() : null;
    }

    /** The number that it ends at, itself included or not; null where it has none. */
    default @Nullable BigDecimal mostNumber() {
        if (this instanceof AtMost atMost) {
            return atMost.most();
        }
        return this instanceof Below below ? below.bound() : this instanceof Between between ? between.most() : null;
    }

    /**
     * By how much the number misses the limit, in its unit; 0 where it keeps it.
     *
     * @throws IllegalArgumentException where the limit is none for numbers
     */
    default BigDecimal missedBy(BigDecimal number) {
        if (this instanceof AtLeast atLeast) {
            return atLeast.least().subtract(number).max(BigDecimal.ZERO);
        } else if (this instanceof AtMost atMost) {
            return number.subtract(atMost.most()).max(BigDecimal.ZERO);
        } else if (this instanceof Below below) {
            return number.subtract(below.bound()).max(BigDecimal.ZERO);
        } else if (this instanceof Between between) {
            return between.least()
                    .subtract(number)
                    .max(number.subtract(between.most()))
                    .max(BigDecimal.ZERO);
        }
        throw new IllegalArgumentException("No limit for numbers: " + this);
    }

    /** Whether the number keeps the limit. */
    default boolean keeps(BigDecimal number) {
        return this instanceof Below below
                ? number.compareTo(below.bound()) < 0
                : missedBy(number).signum() == 0;
    }
}
