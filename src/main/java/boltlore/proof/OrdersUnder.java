package boltlore.proof;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.choices.Choice;
import boltlore.logic.Deadline;
import boltlore.logic.ValidOrders;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** The orders of a family under all limits, under all but one, or under some: two solvers that live as long as a run. */
final class OrdersUnder {

    private static final int QUESTIONS_TO_A_SOLVER = 400;

    private final Family family;
    private final Deadline deadline;
    private ValidOrders valid;
    private int asked;
    private @Nullable Map<OptionName, Set<String>> possible;
    private final IdentityHashMap<Limit, Condition> keeping = new IdentityHashMap<>();
    private @Nullable ValidOrders free;

    OrdersUnder(Family family, Deadline deadline) {
        this.family = family;
        this.deadline = deadline;
        this.valid = new ValidOrders(family, family.limits(), deadline);
    }

    ValidOrders valid() {
        return valid;
    }

    /** Whether an order under those limits fulfils the condition. */
    boolean some(Condition condition, Question.Under under) {
        return under.keeps() == Question.Keeps.ALL
                ? someValid(condition)
                : free().some(keeping(limits(under), condition));
    }

    /** What asks of one option alone is answered for all its values at once. */
    private boolean someValid(Condition condition) {
        if (condition instanceof Condition.Is is) {
            return some(is.option(), is.values()::contains);
        }
        if (condition instanceof Condition.Not not && not.condition() instanceof Condition.Is is) {
            return some(is.option(), value -> !is.values().contains(value));
        }
        return fresh().some(condition);
    }

    private boolean some(OptionName option, Predicate<String> wanted) {
        Map<OptionName, Set<String>> known = possible;
        if (known == null) {
            known = new HashMap<>();
            for (Choice choice : valid.values(List.of())) {
                known.computeIfAbsent(choice.option(), name -> new HashSet<>()).add(choice.value());
            }
            possible = known;
        }
        return known.getOrDefault(option, Set.of()).stream().anyMatch(wanted);
    }

    /** The solver of all valid orders, made anew now and then: it drags along the parts of all it was ever asked. */
    private ValidOrders fresh() {
        asked++;
        if (asked % QUESTIONS_TO_A_SOLVER == 0) {
            valid = new ValidOrders(family, family.limits(), deadline);
        }
        return valid;
    }

    /** Whether an order keeps these limits and fulfils the condition. */
    boolean some(Collection<Limit> limits, Condition condition) {
        return free().some(keeping(limits, condition));
    }

    /** Those of the limits that the last answer 'none' under them rests on: few, not always the fewest. */
    List<Limit> against(Collection<Limit> limits) {
        Set<Condition> against = Collections.newSetFromMap(new IdentityHashMap<>());
        against.addAll(free().against(keeping.values()));
        return limits.stream()
                .filter(limit -> against.contains(keeping.get(limit)))
                .toList();
    }

    List<Limit> limits(Question.Under under) {
        return under.keeps() == Question.Keeps.NONE
                ? List.of()
                : family.limits().stream()
                        .filter(limit -> !limit.equals(under.but()))
                        .toList();
    }

    private List<Condition> keeping(Collection<Limit> limits, Condition condition) {
        List<Condition> all = new ArrayList<>();
        for (Limit limit : limits) {
            all.add(keeping.computeIfAbsent(limit, kept -> new Condition.Not(kept.forbids())));
        }
        all.add(condition);
        return all;
    }

    private ValidOrders free() {
        ValidOrders made = free;
        if (made == null) {
            made = new ValidOrders(family, List.of(), deadline);
            free = made;
        }
        return made;
    }
}
