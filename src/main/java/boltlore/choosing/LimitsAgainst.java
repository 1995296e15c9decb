package boltlore.choosing;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.choices.Mentions;
import boltlore.logic.Deadline;
import boltlore.logic.MinimalConflict;
import boltlore.logic.ValidOrders;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Finds few limits that already forbid something. Lets go of all limits, which takes a solver of its own. */
final class LimitsAgainst {

    private final Family family;
    private final Deadline deadline;
    /** What keeps each limit, in the family's order of limits. */
    private final List<Condition> keeping;

    private @Nullable ValidOrders anyOrder;

    LimitsAgainst(Family family, Deadline deadline) {
        this.family = family;
        this.deadline = deadline;
        this.keeping = family.limits().stream()
                .<Condition>map(limit -> new Condition.Not(limit.forbids()))
                .toList();
    }

    /** A minimal set of limits that no order keeps which fulfils what is given; none where nothing fulfils that anyway. */
    List<Limit> conflict(Collection<Condition> given) {
        if (kept(anyOrder(), given, places().toList())) {
            throw new IllegalArgumentException("No limit stands against " + given);
        }
        List<Integer> some = refuting();
        ValidOrders few = ordersOver(given, some);
        return MinimalConflict.find(some, places -> kept(few, given, places)).orElseThrow().stream()
                .map(family.limits()::get)
                .toList();
    }

    /** The places of those limits that the last refutation rests on. */
    private List<Integer> refuting() {
        Set<Condition> against = Collections.newSetFromMap(new IdentityHashMap<>());
        against.addAll(anyOrder().against(keeping));
        return places().filter(place -> against.contains(keeping.get(place))).toList();
    }

    /** Orders in as many options as the conditions speak of: what the others are does not matter to these. */
    private ValidOrders ordersOver(Collection<Condition> given, Collection<Integer> places) {
        Set<OptionName> spokenOf = new HashSet<>();
        given.forEach(condition -> spokenOf.addAll(Mentions.find(condition)));
        places.forEach(place -> spokenOf.addAll(Mentions.find(keeping.get(place))));
        List<Option> options = family.options().stream()
                .filter(option -> spokenOf.contains(option.name()))
                .toList();
        return new ValidOrders(family.choosing(options, List.of()), List.of(), deadline);
    }

    private Stream<Integer> places() {
        return IntStream.range(0, keeping.size()).boxed();
    }

    private boolean kept(ValidOrders orders, Collection<Condition> given, Collection<Integer> places) {
        List<Condition> all = new ArrayList<>(given);
        places.forEach(place -> all.add(keeping.get(place)));
        return orders.some(all);
    }

    private ValidOrders anyOrder() {
        ValidOrders known = anyOrder;
        if (known == null) {
            known = new ValidOrders(family, List.of(), deadline);
            anyOrder = known;
        }
        return known;
    }
}
