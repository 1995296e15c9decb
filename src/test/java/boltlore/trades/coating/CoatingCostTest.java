package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Oven;
import boltlore.catalogue.Part;
import boltlore.catalogue.TooLarge;
import java.math.BigDecimal;
import java.util.Map;
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

    /** By hand: the oven takes 2000 mm and its coater 20.00 for 1 m² of each coat: 0.5 m² cost 10.00, in two coats 20.00. */
    @Test
    void a_piece_that_does_not_go_into_the_own_oven_costs_what_its_coater_takes() {
        CoatingShop shop = SampleShop.costed("PB-BLACK", 28);
        Part fits = SampleShop.part("P-4", SampleShop.coat("0.5", new EnvelopeMm(2000, 10, 10)));
        Part long1 = SampleShop.part("P-5", SampleShop.coat("0.5", new EnvelopeMm(2001, 10, 10)));
        BigDecimal own = CoatingCost.compute(fits, SampleShop.OWN_BLACK, shop, BigDecimal.ONE);
        assertThat(own).isEqualByComparingTo("5.80");
        assertThat(CoatingCost.compute(long1, SampleShop.OWN_BLACK, shop, BigDecimal.ONE))
                .isEqualByComparingTo("10.00");
        assertThat(CoatingCost.compute(long1, SampleShop.OWN_TWO_COAT, shop, BigDecimal.ONE))
                .isEqualByComparingTo("20.00");
        assertThat(CoatingCost.compute(fits, SampleShop.OWN_BLACK, shop, new BigDecimal("99.8")))
                .as("100 kg with its hook, which is what the oven bears, were 99.75")
                .isEqualByComparingTo("10.00");
    }

    @Test
    void freight_there_and_back_goes_by_the_piece_s_mass() {
        Part long1 = SampleShop.part("P-5", SampleShop.coat("0.5", new EnvelopeMm(2001, 10, 10)));
        CoatingShop shop = SampleShop.costed("PB-BLACK", 28);
        Oven oven = SampleShop.oven("3");
        TooLarge dear = new TooLarge("Coater B", new BigDecimal("20.00"), new BigDecimal("1.50"));
        Oven with = new Oven(
                oven.name(),
                oven.says(),
                oven.inside(),
                oven.hooks(),
                oven.loadKg(),
                oven.loadAreaM2(),
                oven.fillPercent(),
                null,
                0,
                0,
                dear);
        CoatingShop far = new CoatingShop(
                Map.of("own", with), shop.booths(), shop.coaters(), shop.masks(), shop.powders(), shop.ownCostPerM2());
        assertThat(CoatingCost.compute(long1, SampleShop.OWN_BLACK, far, new BigDecimal("8")))
                .isEqualByComparingTo("22.00");
    }

    private static BigDecimal cost(Part part, Finish finish) {
        BigDecimal kg = part.massKg() == null ? BigDecimal.ZERO : part.massKg();
        return CoatingCost.compute(part, finish, SampleShop.SHOP, kg);
    }
}
