package boltlore.proof;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.choices.Choices;
import boltlore.logic.Deadline;
import boltlore.logic.ValidOrders;
import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The orders of a family under all limits, under all but one, or under some: two solvers that live as long as a run. */
final class OrdersUnder {

    private final Family family;
    private final Deadline deadline;
    private final ValidOrders valid;
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

    /** An order under those limits that fulfils the condition. */
    Optional<Choices> some(Condition condition, Question.Under under) {
        return under.keeps() == Question.Keeps.ALL
                ? valid.witness(condition)
                : free().witness(keeping(limits(under), condition));
    }

    /** Whether an order keeps these limits and fulfils the condition. */
    boolean some(Collection<Limit> limits, Condition condition) {
        return free().some(keeping(limits, condition));
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
