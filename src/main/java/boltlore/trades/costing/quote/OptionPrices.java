package boltlore.trades.costing.quote;

import boltlore.bill.Bill;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.choices.Choices;
import boltlore.measure.OptionName;
import boltlore.resolution.Resolver;
import boltlore.trades.KitInWork;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What each option of an order makes of the price of its kit. One after the other is taken away, or its cheapest other
 * value taken in its place, and the kit priced anew by the one computation: each amount is the difference between two
 * whole kits, and with the kit that is left they add up to the price exactly.
 *
 * @param steps in the order in which the options were taken away
 * @param plain price of the kit that is left
 */
public record OptionPrices(List<Step> steps, BigDecimal plain) {

    /** What the vehicle, its market or its owner's house decides, and language and colour, are no extras. */
    private static final Set<Role> GIVEN =
            EnumSet.of(Role.ERA, Role.DRIVE_SIDE, Role.MARKET, Role.SUPPLY, Role.LANGUAGE, Role.INLET);

    /**
     * Options that go together, because limits let none of them go alone.
     *
     * @param amount what the kit costs more with the chosen values
     */
    public record Step(List<Changed> changed, BigDecimal amount) {}

    /** An option with its chosen value and the one that it is priced against. */
    public record Changed(Option option, OptionValue chosen, OptionValue without) {}

    public OptionPrices {
        steps = List.copyOf(steps);
    }

    /** Of the kit of that price; empty where nobody can say what other kits would be. */
    public static Optional<OptionPrices> of(KitInWork kit, QuoteRequest asked, BigDecimal price) {
        OptionPrices found = new Search(kit, asked, price).found();
        return found.steps().isEmpty() ? Optional.empty() : Optional.of(found);
    }

    /** Goes on as long as something can still be taken away. */
    private static final class Search {

        private final KitInWork kit;
        private final QuoteRequest asked;
        private final Choices chosen;
        private final Map<OptionName, Set<String>> bring = new HashMap<>();
        private final Map<Choices, Optional<BigDecimal>> priced = new HashMap<>();
        private final Set<OptionName> done = new HashSet<>();
        private final List<Step> steps = new ArrayList<>();
        private Choices now;
        private BigDecimal price;

        Search(KitInWork kit, QuoteRequest asked, BigDecimal price) {
            this.kit = kit;
            this.asked = asked;
            this.price = price;
            this.chosen = kit.choices();
            this.now = chosen;
            kit.family().lines().forEach(line -> collect(line.when()));
        }

        OptionPrices found() {
            List<Option> open =
                    kit.family().options().stream().filter(this::isExtra).toList();
            boolean more = true;
            while (more) {
                more = open.stream().filter(option -> !done.contains(option.name())).toList().stream()
                        .anyMatch(this::taken);
            }
            return new OptionPrices(steps, price);
        }

        private boolean isExtra(Option option) {
            return option.scale() == null
                    && (option.role() == null || !GIVEN.contains(option.role()))
                    && !kit.order().settledByDate().contains(option.name())
                    && bring.containsKey(option.name())
                    && chosen.value(option.name()).isPresent();
        }

        /** Whether it could be taken away, alone or with what limits tie to it. */
        private boolean taken(Option option) {
            Choices best = null;
            BigDecimal least = price;
            for (OptionValue value : others(option)) {
                for (Choices next : allowed(now.with(option.name(), value.value()), option)) {
                    BigDecimal found = price(next).orElse(null);
                    if (found != null && found.compareTo(least) < 0) {
                        best = next;
                        least = found;
                    }
                }
            }
            if (best == null) {
                return false;
            }
            steps.add(new Step(changes(best), price.subtract(least)));
            changes(best).forEach(changed -> done.add(changed.option().name()));
            now = best;
            price = least;
            return true;
        }

        /** Values that bring nothing, where the chosen one brings something; else all others. */
        private List<OptionValue> others(Option option) {
            Set<String> bringing = Objects.requireNonNull(bring.get(option.name()));
            String is = now.value(option.name()).orElse("");
            List<OptionValue> others = option.values().stream()
                    .filter(value -> !value.value().equals(is))
                    .toList();
            List<OptionValue> nothing = others.stream()
                    .filter(value -> !bringing.contains(value.value()))
                    .toList();
            return bringing.contains(is) && !nothing.isEmpty() ? nothing : others;
        }

        /** The choices themselves, or with one other option changed that the broken limit speaks of. */
        private List<Choices> allowed(Choices next, Option first) {
            List<Limit> broken = Resolver.brokenLimits(next);
            if (broken.isEmpty()) {
                return List.of(next);
            }
            Set<OptionName> named = new HashSet<>();
            broken.forEach(limit -> names(limit.forbids(), named));
            return kit.family().options().stream()
                    .filter(option -> named.contains(option.name()) && !option.equals(first))
                    .filter(option -> isExtra(option) && !done.contains(option.name()))
                    .flatMap(option -> option.values().stream().map(value -> next.with(option.name(), value.value())))
                    .filter(both -> Resolver.brokenLimits(both).isEmpty())
                    .toList();
        }

        private List<Changed> changes(Choices next) {
            return kit.family().options().stream()
                    .flatMap(option -> Stream.ofNullable(changed(option, next)))
                    .toList();
        }

        private @Nullable Changed changed(Option option, Choices next) {
            String before = now.value(option.name()).orElse("");
            String after = next.value(option.name()).orElse("");
            return before.equals(after)
                    ? null
                    : new Changed(
                            option,
                            option.value(before).orElseThrow(),
                            option.value(after).orElseThrow());
        }

        private Optional<BigDecimal> price(Choices choices) {
            return priced.computeIfAbsent(
                    choices, each -> kit.otherwise(each).flatMap(this::quoted).map(Quotation::kitPrice));
        }

        private Optional<Quotation> quoted(Bill bill) {
            return OrderPricing.of(bill, kit.catalogue(), asked).quotation();
        }

        private void collect(Condition condition) {
            if (condition instanceof Condition.Is is) {
                bring.computeIfAbsent(is.option(), any -> new HashSet<>()).addAll(is.values());
            } else if (!(condition instanceof Condition.Not)) {
                condition.parts().forEach(this::collect);
            }
        }

        private static void names(Condition condition, Set<OptionName> named) {
            if (condition instanceof Condition.Is is) {
                named.add(is.option());
            }
            condition.parts().forEach(each -> names(each, named));
        }
    }
}
