package boltlore.asking;

import boltlore.catalogue.BuildDate;
import boltlore.catalogue.BuildDates;
import boltlore.catalogue.Option;
import boltlore.choices.Choices;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.OptionName;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import java.util.Optional;
import java.util.TreeSet;

/** What a build date settles: a month or a year as much as its days have in common. */
public final class BuiltSaid {

    private BuiltSaid() {}

    public static Outcome<Order> in(Order order, String text) {
        Optional<BuildDate> read = SaidDay.built(text);
        if (read.isEmpty()) {
            return Outcome.faulty(Fault.of("", "'" + text + "'", SaidDay.BUILT_EXPECTED, ""));
        }
        BuildDate built = read.get();
        TreeSet<OptionName> byDate = new TreeSet<>(order.settledByDate());
        Choices choices = order.choices();
        for (Option option : choices.family().options()) {
            Optional<BuildDates> dates = option.builtFrom().stream()
                    .filter(each -> each.holds(built))
                    .findFirst();
            boolean open = choices.value(option.name()).isEmpty() || byDate.contains(option.name());
            if (!option.builtFrom().isEmpty() && open && dates.isEmpty()) {
                return Outcome.faulty(Fault.of(
                        "",
                        "built " + text + ", in which the answer to '" + option.asks() + "' changed",
                        "a month or a day",
                        "Or leave it empty and answer that question."));
            }
            if (dates.isPresent() && open) {
                choices = choices.with(option.name(), dates.get().value());
                byDate.add(option.name());
            }
        }
        return Outcome.sound(new OrderBuilder(order)
                .choices(choices)
                .settledByDate(byDate)
                .donorBuilt(built)
                .build());
    }

    /** The order without a build date, and without what that has settled. */
    public static Order without(Order order) {
        TreeSet<OptionName> byDate = new TreeSet<>(order.settledByDate());
        Choices choices = order.choices();
        for (Option option : choices.family().options()) {
            if (!option.builtFrom().isEmpty() && byDate.remove(option.name())) {
                choices = choices.without(option.name());
            }
        }
        return new OrderBuilder(order)
                .choices(choices)
                .settledByDate(byDate)
                .donorBuilt(null)
                .build();
    }

    /** An option that a build date would settle and nobody has answered. */
    static boolean wouldSettle(Choices choices) {
        return choices.unsettled().stream()
                .anyMatch(option -> !option.builtFrom().isEmpty());
    }
}
