package boltlore.choosing;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.logic.Count;
import boltlore.logic.Deadline;
import boltlore.logic.KitConditions;
import boltlore.logic.OrderCounter;
import boltlore.logic.PartConditions;
import boltlore.logic.PrimeImplicantCover;
import boltlore.logic.RestrictedFamily;
import boltlore.logic.ValidOrders;
import boltlore.measure.PartNumber;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Answers questions on all orders of a family that keep some choices. Not safe to share between threads. */
public final class FamilyQuestions {

    /** More ways than this are no plain answer. */
    private static final int MOST_WAYS = 40;

    private static final Count NONE = new Count.Exactly(BigInteger.ZERO);

    private final Family family;
    private final Deadline deadline;
    private final Chooser chooser;
    private final PartConditions parts;
    private final ValidOrders orders;
    private @Nullable Counted counted;

    public FamilyQuestions(Catalogue catalogue, Chooser chooser, Deadline deadline) {
        this.family = chooser.family();
        this.deadline = deadline;
        this.chooser = chooser;
        this.parts = new PartConditions(new KitConditions(catalogue, family, false));
        this.orders = new ValidOrders(family, family.limits(), deadline);
    }

    /**
     * The orders that keep some choices, in as few values as they have.
     *
     * @param counter none where no order keeps them
     */
    private record Counted(
            Choices keeping,
            RestrictedFamily narrowed,
            @Nullable OrderCounter counter) {

        Count with(Condition condition) {
            return counter == null ? NONE : counter.with(narrowed.of(condition));
        }
    }

    /** How many valid orders keep the choices. */
    public Count count(Choices keeping) {
        return counted(keeping).with(Condition.ALWAYS);
    }

    /**
     * Which orders bring a part.
     *
     * @param when among the orders that keep the choices; empty where it takes too many words
     */
    public record Bringing(Optional<Condition> when, Count bringing, Count all) {}

    public Bringing bringing(PartNumber part, Choices keeping) {
        List<Condition> given = Wanted.all(Chooser.list(keeping));
        Condition present = parts.present(part);
        Optional<Condition> when = PrimeImplicantCover.compute(orders, family, present, given, MOST_WAYS);
        Counted counting = counted(keeping);
        return new Bringing(when, counting.with(present), counting.with(Condition.ALWAYS));
    }

    /** Whether some order has all of these parts. */
    public sealed interface Together {

        /** Such an order. */
        record Possible(Choices order) implements Together {}

        /** No order has them, because of these choices and limits. */
        record Never(Conflict conflict) implements Together {}
    }

    public Together together(List<PartNumber> all, Choices keeping) {
        List<Condition> present = all.stream().map(parts::present).toList();
        List<Condition> asked = new java.util.ArrayList<>(Wanted.all(Chooser.list(keeping)));
        asked.addAll(present);
        return orders.witness(asked)
                .<Together>map(Together.Possible::new)
                .orElseGet(() -> new Together.Never(chooser.against(keeping, present, Importance.NONE)));
    }

    /** The parts that every order brings which keeps the choices. */
    public SureParts sure(Choices keeping) {
        return SureParts.of(parts, orders, keeping, count(keeping));
    }

    /** Closed values are taken out before the count: what is left is often small where the whole family is not. */
    private Counted counted(Choices keeping) {
        Counted known = counted;
        if (known == null || !known.keeping().equals(keeping)) {
            counted = null;
            Set<Choice> open = orders.values(Wanted.all(Chooser.list(keeping)));
            boolean none = open.isEmpty() && !family.options().isEmpty();
            RestrictedFamily narrowed = new RestrictedFamily(family, open::contains);
            known = new Counted(keeping, narrowed, none ? null : counter(narrowed.family()));
            counted = known;
        }
        return known;
    }

    private OrderCounter counter(Family narrowed) {
        return new OrderCounter(narrowed, narrowed.limits(), deadline, false);
    }
}
