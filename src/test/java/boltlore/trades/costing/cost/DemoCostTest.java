package boltlore.trades.costing.cost;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.PriceBook;
import boltlore.demo.Demo;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.Pricing;
import java.util.Objects;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Orders of both families, with extras, through partners, into every market. */
@DisplayName("The demo's full costs")
class DemoCostTest {

    private static CostedBill priced(String order) {
        return Pricing.cost(Demo.bill(order), Demo.catalogue());
    }

    private static FullCost cost(String order) {
        PriceBook prices = Objects.requireNonNull(Demo.catalogue().prices());
        return FullCosting.cost(priced(order), prices);
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1002", "bl-1004", "bl-1008", "bl-1010", "bl-1011", "bl-2001", "bl-2003"})
    @DisplayName("are reached from the costed bill's direct cost over the bridge, to the cent")
    void bridge(String order) {
        FullCost cost = cost(order);
        assertThat(Bridge.of(cost).full()).isEqualByComparingTo(cost.kit().total());
        assertThat(Bridge.of(cost).direct())
                .isEqualByComparingTo(priced(order).totals().cost());
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1008", "bl-2001"})
    @DisplayName("bear every element that the order gives rise to, and none below 0")
    void elements(String order) {
        assertThat(cost(order).kit().amounts().values())
                .allSatisfy(amount -> assertThat(amount.signum()).isNotNegative());
        assertThat(cost(order).kit().of(Element.CLEARANCE)).isPositive();
    }
}
