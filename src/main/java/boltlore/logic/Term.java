package boltlore.logic;

import boltlore.catalogue.Condition;
import java.math.BigDecimal;

/**
 * So many, in the orders that fulfil the condition, which ranges over options alone.
 *
 * @param above how many there are already where this comes on top of them as one quantity: a further step of a joint. What
 *     is rounded for the whole quantity is this step's part of it only as a difference
 */
public record Term(BigDecimal quantity, Condition when, BigDecimal above) {

    public Term(BigDecimal quantity, Condition when) {
        this(quantity, when, BigDecimal.ZERO);
    }

    /** So many times it, where that condition holds too. */
    public Term times(BigDecimal factor, Condition also) {
        return new Term(quantity.multiply(factor), All.of(when, also), above.multiply(factor.abs()));
    }
}
