package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import java.math.BigDecimal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class CoatingCostTest {

    private static final Part HALF_SQUARE_METRE = SampleShop.part("P-1", SampleShop.coat("0.5"));

    @Test
    @DisplayName("In the own oven: 0.5 m² × 10.00 and 0.100 kg of powder × 8.00")
    void own_oven() {
        assertThat(cost(HALF_SQUARE_METRE, SampleShop.OWN_BLACK)).isEqualByComparingTo("5.80");
    }

    @Test
    @DisplayName("A second coat costs its labour, gas and powder again")
    void own_oven_two_coats() {
        BigDecimal primerKg = FilmMass.issue(new BigDecimal("0.5"), SampleShop.PRIMER);
        assertThat(cost(HALF_SQUARE_METRE, SampleShop.OWN_TWO_COAT))
                .isEqualByComparingTo(new BigDecimal("10.80").add(primerKg.multiply(new BigDecimal("6.00"))));
    }

    @Test
    void an_outside_coater_by_area_takes_the_area() {
        assertThat(cost(HALF_SQUARE_METRE, SampleShop.ZINC_BY_AREA)).isEqualByComparingTo("12.25");
    }

    @Test
    void an_outside_coater_by_piece_does_not_look_at_the_area() {
        assertThat(cost(HALF_SQUARE_METRE, SampleShop.ZINC_BY_PIECE)).isEqualByComparingTo("1.90");
    }

    @Test
    void a_part_that_is_not_coated_costs_nothing_even_by_the_piece() {
        assertThat(cost(SampleShop.part("P-2", null), SampleShop.ZINC_BY_PIECE)).isZero();
    }

    @Test
    void the_cost_is_not_rounded() {
        Part third = SampleShop.part("P-3", SampleShop.coat("0.0001"));
        assertThat(cost(third, SampleShop.OWN_BLACK)).isEqualByComparingTo("0.00116");
    }

    @Test
    void a_powder_without_a_price_is_named() {
        Finish unknown = SampleShop.own("odd", SampleShop.coats("PB-ODD", "1.5", 80));
        assertThatThrownBy(() -> cost(HALF_SQUARE_METRE, unknown)).hasMessageContaining("PB-ODD");
    }

    private static BigDecimal cost(Part part, Finish finish) {
        return CoatingCost.compute(part, finish, SampleShop.SHOP);
    }
}
