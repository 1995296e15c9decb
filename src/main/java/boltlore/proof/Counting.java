package boltlore.proof;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.choices.Choices;
import boltlore.logic.Any;
import boltlore.logic.Count;
import boltlore.logic.Deadline;
import boltlore.logic.OrderCounter;
import boltlore.logic.Truth;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Counts valid orders exactly, each number a second time by other means. */
final class Counting {

    private static final Count TIME_UP = new Count.GivenUp("the time was up");

    private final Family family;
    private final Deadline deadline;
    private @Nullable Count all;
    private @Nullable OrderCounter counter;
    private @Nullable OrderCounter backwards;
    private @Nullable List<Choices> variants;
    private boolean small = true;
    /** Once there was no time for the diagrams: another try for each defect would take the time of all other answers. */
    private boolean tooSlow;

    private @Nullable BigInteger ordersEach;

    Counting(Family family, Deadline deadline) {
        this.family = family;
        this.deadline = deadline;
    }

    /** How many valid orders there are, or that there was no time to count them. */
    Count allInTime() {
        try {
            return all();
        } catch (Deadline.Passed e) {
            forget();
            return TIME_UP;
        }
    }

    private Count all() {
        Count counted = all;
        if (counted == null) {
            counted = counter().all();
            all = counted;
        }
        return counted;
    }

    /**
     * How many valid orders fulfil the condition.
     *
     * @throws IllegalStateException where the two counts differ, or one order is known and none is counted: a defect of
     *     the program
     */
    Touched touched(Condition condition, boolean someAreKnown) {
        if (tooSlow) {
            return notCounted();
        }
        try {
            return counted(condition, someAreKnown);
        } catch (Deadline.Passed e) {
            forget();
            tooSlow = true;
            return notCounted();
        }
    }

    Touched notCounted() {
        return new Touched(TIME_UP, TIME_UP, "");
    }

    private Touched counted(Condition condition, boolean someAreKnown) {
        if (condition.equals(Any.NEVER) && !someAreKnown) {
            return new Touched(new Count.Exactly(BigInteger.ZERO), all(), "there being none");
        }
        Count counted = condition.isAlways() ? all() : counter().with(condition);
        if (!(counted instanceof Count.Exactly exactly)) {
            return new Touched(counted, all(), "");
        }
        if (someAreKnown && exactly.orders().signum() == 0) {
            throw new IllegalStateException("An order is known, and none is counted");
        }
        return new Touched(counted, all(), checked(condition, exactly.orders()));
    }

    private String checked(Condition condition, BigInteger counted) {
        Optional<List<Choices>> plain = variants();
        if (plain.isPresent()) {
            long holding = plain.get().stream()
                    .filter(choices -> new Truth(choices).of(condition))
                    .count();
            agree(counted, BigInteger.valueOf(holding).multiply(ordersEach()));
            return "plain enumeration";
        }
        if (backwards().with(condition) instanceof Count.Exactly again) {
            agree(counted, again.orders());
            return "a second diagram, ordered backwards";
        }
        return "";
    }

    /** Diagrams that ran out of time are of no use any more. */
    private void forget() {
        counter = null;
        backwards = null;
    }

    private static void agree(BigInteger one, BigInteger other) {
        if (!one.equals(other)) {
            throw new IllegalStateException("Two counts of the same orders differ: " + one + " and " + other);
        }
    }

    private OrderCounter counter() {
        OrderCounter made = counter;
        if (made == null) {
            made = new OrderCounter(family, family.limits(), deadline, false);
            counter = made;
        }
        return made;
    }

    private OrderCounter backwards() {
        OrderCounter made = backwards;
        if (made == null) {
            made = new OrderCounter(family, family.limits(), deadline, true);
            backwards = made;
        }
        return made;
    }

    private BigInteger ordersEach() {
        BigInteger each = ordersEach;
        if (each == null) {
            each = PlainVariants.ordersEach(family);
            ordersEach = each;
        }
        return each;
    }

    private boolean isSmall() {
        return all() instanceof Count.Exactly exactly
                && exactly.orders().compareTo(ordersEach().multiply(BigInteger.valueOf(PlainVariants.MOST_VARIANTS)))
                        <= 0;
    }

    private Optional<List<Choices>> variants() {
        if (variants == null && small && isSmall()) {
            variants = PlainVariants.list(family).orElse(null);
            small = variants != null;
        }
        return Optional.ofNullable(variants);
    }
}
