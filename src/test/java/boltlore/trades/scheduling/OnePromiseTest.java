package boltlore.trades.scheduling;

import static boltlore.trades.scheduling.Planned.kit;
import static boltlore.trades.scheduling.Planned.withKit;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.findings.Finding;
import boltlore.trades.KitInWork;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.QuoteOptions;
import boltlore.trades.scheduling.finite.DispatchRule;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Alone in an empty workshop")
class OnePromiseTest {

    static Stream<String> orders() {
        return Planned.ORDERS.stream();
    }

    static Stream<String> withoutShutDown() {
        return orders().filter(order -> !order.equals("bl-1014"));
    }

    private static LocalDate priced(KitInWork kit) {
        OrderPricing pricing = QuoteOptions.pricing(kit, Given.NONE);
        return kit.day().plusDays(pricing.leadDays());
    }

    private static LocalDate alone(KitInWork kit) {
        return WorkPlan.of(
                        List.of(kit),
                        java.util.Objects.requireNonNull(kit.catalogue().capacity()),
                        kit.day(),
                        DispatchRule.EARLIEST_DUE,
                        Map.of())
                .finish(0);
    }

    @ParameterizedTest
    @MethodSource("orders")
    @DisplayName("that knows no days off, an order is finished on the very day of its price's lead time")
    void without_days_off(String order) {
        KitInWork kit = kit(order, Planned.withoutDaysOff());

        assertThat(alone(kit)).isEqualTo(priced(kit));
    }

    @ParameterizedTest
    @MethodSource("withoutShutDown")
    @DisplayName("with its days off too, where no shut-down lies before its end")
    void with_days_off(String order) {
        KitInWork kit = kit(order, Planned.demo());

        assertThat(alone(kit)).isEqualTo(priced(kit));
        assertThat(withKit(kit).findings().all()).isEmpty();
    }

    @Test
    @DisplayName("an order that would end in the winter shut-down is told to end after it")
    void shut_down() {
        KitInWork kit = kit("bl-1014", Planned.demo());

        Finding found = withKit(kit).findings().all().get(0);

        assertThat(found.kind()).isEqualTo(SchedulingFinding.LEAD_TIME_TOO_SHORT);
        assertThat(found.says())
                .isEqualTo(
                        "Order BL-1014: by the lead time of its price it is ready on 2026-12-27, but even with nothing else"
                                + " in the workshop it is finished on 2027-01-04, one working day later. Assembling, testing and"
                                + " packing the kit takes 14 days and not 6; 7 days off lie in that time.");
        assertThat(withKit(kit).findings().all()).hasSize(1);
    }

    @Test
    @DisplayName("a work centre that is too slow for one order is told by its price's date")
    void slow_centre() {
        KitInWork kit = kit("bl-1001", Planned.with("weld", Planned.hours("0.5")));

        assertThat(withKit(kit).findings().all())
                .extracting(Finding::kind)
                .contains(SchedulingFinding.LEAD_TIME_TOO_SHORT);
        assertThat(alone(kit)).isAfter(priced(kit));
    }

    @Test
    @DisplayName("an order gets no sheet: dates of an empty workshop are no promise")
    void no_sheet() {
        assertThat(withKit(kit("bl-1001", Planned.demo())).sheets()).isEmpty();
    }
}
