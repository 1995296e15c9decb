package boltlore.resolution.rules.facts;

import java.math.BigDecimal;

/** How many left and right parts of a pair that ships both are in the kit. */
public record PairCount(String pair, BigDecimal left, BigDecimal right) {

    public boolean equal() {
        return left.compareTo(right) == 0;
    }
}
