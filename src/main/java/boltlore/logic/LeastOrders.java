package boltlore.logic;

import boltlore.catalogue.Condition;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** All orders that share the least sum. */
public final class LeastOrders {

    private final ValidOrders orders;
    private final List<Integer> least;
    private final BigDecimal sum;

    LeastOrders(ValidOrders orders, List<Integer> least, BigDecimal sum) {
        this.orders = orders;
        this.least = least;
        this.sum = sum;
    }

    /** The least sum, to the grain. */
    public BigDecimal sum() {
        return sum;
    }

    /** The values that stand in one of the least orders. */
    public Set<Choice> values() {
        return orders.valuesGiven(least);
    }

    /**
     * One of the least orders that fulfils all of these conditions, if there is one.
     *
     * @param rather values that it should have where it can, the first ones rather than the last
     */
    public Optional<Choices> one(Collection<Condition> also, List<Choice> rather) {
        List<Integer> all = new ArrayList<>(least);
        all.addAll(orders.selectors(also));
        return orders.someGiven(all, rather) ? Optional.of(orders.lastFound()) : Optional.empty();
    }
}
