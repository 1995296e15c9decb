package boltlore.proof;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.logic.Deadline;
import boltlore.logic.ValidOrders;
import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The orders of a family under all limits, under all but one, or under some: two solvers that live as long as a run. */
final class OrdersUnder {

    private static final int QUESTIONS_TO_A_SOLVER = 400;

    private final Family family;
    private final Deadline deadline;
    private ValidOrders valid;
    private int asked;
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
                ? fresh().some(condition)
                : free().some(keeping(limits(under), condition));
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
