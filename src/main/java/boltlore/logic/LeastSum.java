package boltlore.logic;

import boltlore.catalogue.Condition;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The valid orders of a family for which a sum over conditions is least, with the proof that none has less. Not safe to
 * share between threads.
 */
public final class LeastSum {

    private final ValidOrders orders;
    private final Objective objective;

    /** @param orders which this sum shares with other questions */
    public LeastSum(ValidOrders orders, List<Term> terms) {
        this.orders = orders;
        this.objective = new Objective(orders, terms);
    }

    /** The negative of the sum: its least orders are those for which the sum is greatest. */
    public static LeastSum ofNegative(ValidOrders orders, List<Term> terms) {
        return new LeastSum(
                orders,
                terms.stream()
                        .map(term -> new Term(term.quantity().negate(), term.when()))
                        .toList());
    }

    /**
     * Looks at the least orders among those that fulfil all of these conditions; empty where none does.
     *
     * @param look asked of the least orders, which must not be kept
     * @throws Deadline.Passed where the time was up before the proof was done
     */
    public <T> Optional<T> among(Collection<Condition> given, Function<LeastOrders, T> look) {
        return orders.aside(() -> {
            List<Integer> hard = orders.selectors(given);
            if (!orders.someGiven(hard)) {
                return Optional.empty();
            }
            CoreGuidedMaxSat wishes = new CoreGuidedMaxSat(orders, hard, objective.weights());
            return Optional.of(look.apply(new LeastOrders(orders, wishes.left(), objective.total(wishes.paid()))));
        });
    }

    /** The step in which sums are compared: conditions whose parts differ by less are rounded to it. */
    public BigDecimal grain() {
        return BigDecimal.ONE.movePointLeft(objective.digits());
    }
}
