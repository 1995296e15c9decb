package boltlore.logic;

import boltlore.catalogue.Condition;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Minimal repairs one after the other, those that give up fewest requests first. Each is minimal: what it gives up could
 * not be kept in part. Not safe to share between threads.
 */
public final class FewestChanges {

    private final ValidOrders orders;
    private final List<Condition> requests;
    private final List<Condition> given;

    /** @param given what the orders fulfil in any case */
    public FewestChanges(ValidOrders orders, Collection<Condition> given, List<Condition> requests) {
        this.orders = orders;
        this.requests = requests;
        this.given = new ArrayList<>(given);
    }

    /**
     * The requests that the next repair gives up; empty where there is no further one.
     *
     * @param also what the orders fulfil besides
     */
    public Optional<List<Condition>> next(Collection<Condition> also) {
        return orders.aside(() -> fewest(also));
    }

    /** From now on other repairs are looked for: none that give up all of these. */
    public void further(List<Condition> givenUp) {
        given.add(Any.of(givenUp));
    }

    private Optional<List<Condition>> fewest(Collection<Condition> also) {
        List<Integer> hard = new ArrayList<>(orders.selectors(given));
        hard.addAll(orders.selectors(also));
        if (!orders.someGiven(hard)) {
            return Optional.empty();
        }
        Map<Integer, Long> weights = new LinkedHashMap<>();
        requests.forEach(request -> weights.put(orders.selector(request), 1L));
        return Optional.of(brokenBy(order(new CoreGuidedMaxSat(orders, hard, weights))));
    }

    private Choices order(CoreGuidedMaxSat wishes) {
        if (!orders.someGiven(wishes.left())) {
            throw new IllegalStateException("The cheapest orders are gone");
        }
        return orders.lastFound();
    }

    private List<Condition> brokenBy(Choices order) {
        return requests.stream()
                .filter(request -> !Conditions.holds(request, order))
                .toList();
    }
}
