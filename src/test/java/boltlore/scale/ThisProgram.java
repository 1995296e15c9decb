package boltlore.scale;

import boltlore.catalogue.Condition;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choosing.ChoiceState;
import boltlore.choosing.Chooser;
import boltlore.logic.All;
import boltlore.logic.Count;
import boltlore.logic.Deadline;
import boltlore.logic.LeastOrders;
import boltlore.logic.LeastSum;
import boltlore.logic.OrderCounter;
import boltlore.logic.ValidOrders;
import boltlore.measure.OptionName;
import java.math.BigInteger;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;

/** What sales asks on the screen, by the classes that answer there. */
final class ThisProgram implements Asked.Way {

    private final Asked asked;
    private final Chooser chooser;
    private final ValidOrders orders;
    private final LeastSum sum;
    private final OrderCounter counter;

    ThisProgram(Asked asked, Deadline deadline) {
        this.asked = asked;
        chooser = new Chooser(asked.family(), deadline);
        orders = new ValidOrders(asked.family(), asked.family().limits(), deadline);
        sum = new LeastSum(orders, asked.terms());
        counter = new OrderCounter(asked.family(), asked.family().limits(), deadline, false);
    }

    @Override
    public Set<Choice> open(List<Choice> kept) {
        Map<OptionName, String> values = new HashMap<>();
        kept.forEach(choice -> values.put(choice.option(), choice.value()));
        ChoiceState state = chooser.standing(Choices.of(asked.family(), values));
        return state instanceof ChoiceState.Sound sound ? sound.open() : Set.of();
    }

    @Override
    public boolean possible(List<Choice> kept) {
        return orders.some(conditions(kept));
    }

    @Override
    public OptionalLong cheapest(List<Choice> kept) {
        return sum.among(conditions(kept), LeastOrders::sum).stream()
                .mapToLong(least -> least.longValueExact())
                .findFirst();
    }

    /** @throws Deadline.Passed where the diagram grows beyond its limit */
    @Override
    public BigInteger count(List<Choice> kept) {
        Count count = counter.with(All.of(conditions(kept)));
        if (count instanceof Count.Exactly exactly) {
            return exactly.orders();
        }
        throw new Deadline.Passed(((Count.GivenUp) count).why());
    }

    private static List<Condition> conditions(List<Choice> kept) {
        return kept.stream()
                .<Condition>map(choice -> new Condition.Is(choice.option(), new TreeSet<>(Set.of(choice.value()))))
                .toList();
    }
}
