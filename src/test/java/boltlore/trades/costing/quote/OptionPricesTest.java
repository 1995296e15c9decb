package boltlore.trades.costing.quote;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.answers.OrderKit;
import boltlore.catalogue.OptionValue;
import boltlore.demo.Demo;
import boltlore.resolution.OrderResolver;
import boltlore.resolution.rules.RuleResolver;
import boltlore.trades.KitInWork;
import java.math.BigDecimal;
import java.util.Objects;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("What each option makes of the price")
class OptionPricesTest {

    private static KitInWork kit(String order) {
        return Demo.kit(order)
                .beside(OrderKit.beside(
                        new OrderResolver(new RuleResolver(Demo.catalogue())),
                        Demo.bill(order).order()));
    }

    private static QuoteRequest asked(KitInWork kit) {
        return new QuoteRequest(Objects.requireNonNull(kit.order().placed()), null, null);
    }

    private static BigDecimal price(KitInWork kit) {
        return OrderPricing.of(kit.bill(), kit.catalogue(), asked(kit))
                .quotation()
                .orElseThrow()
                .kitPrice();
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1010", "bl-2001"})
    void adds_up_to_the_price_of_the_kit_with_what_is_left(String order) {
        KitInWork kit = kit(order);
        OptionPrices options = OptionPrices.of(kit, asked(kit), price(kit)).orElseThrow();
        BigDecimal sum =
                options.steps().stream().map(OptionPrices.Step::amount).reduce(options.plain(), BigDecimal::add);
        assertThat(sum).isEqualByComparingTo(price(kit));
        assertThat(options.steps()).allSatisfy(step -> assertThat(step.amount()).isPositive());
    }

    /** The family's limits join outlet and two-way charger: neither goes without the other. */
    @Test
    void takes_together_what_limits_join_and_each_option_once() {
        KitInWork kit = kit("bl-1001");
        OptionPrices options = OptionPrices.of(kit, asked(kit), price(kit)).orElseThrow();
        assertThat(options.steps())
                .anySatisfy(step -> assertThat(step.changed())
                        .extracting(OptionPrices.Changed::chosen)
                        .extracting(OptionValue::value)
                        .containsExactlyInAnyOrder("eleven-two-way", "cee-7-3"));
        assertThat(options.steps().stream()
                        .flatMap(step -> step.changed().stream())
                        .map(changed -> changed.option().name()))
                .doesNotHaveDuplicates()
                .noneSatisfy(name -> assertThat(name.text()).isIn("body-era", "drive-side", "market", "language"));
    }

    @Test
    void is_not_told_where_nobody_can_say_what_other_kits_would_be() {
        KitInWork alone = Demo.kit("bl-1001");
        assertThat(OptionPrices.of(alone, asked(alone), price(alone))).isEmpty();
    }
}
