package boltlore.trades.costing.cost;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Origin;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.PriceBook;
import boltlore.demo.Demo;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.OrderSketch;
import boltlore.sketch.PartSketch;
import boltlore.sketch.PositionSketch;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.PriceBookSketch;
import boltlore.trades.costing.Pricing;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Job costing: labour is hours times rate, and overhead goes on labour by its percentage. The check value is CO-01 of the
 * job-costing exercise of transtutors.com (109335): overhead of 115 % on 10200 of labour is 11730.
 */
@DisplayName("Work on a kit as a whole")
class KitTaskTest {

    private static FullCost demo(String order) {
        Catalogue catalogue = Demo.catalogue();
        CostedBill costed = Pricing.cost(Demo.bill(order), catalogue);
        return FullCosting.cost(costed, Objects.requireNonNull(catalogue.prices()), extra -> BigDecimal.ZERO);
    }

    @Nested
    @DisplayName("in a small kit")
    class Small {

        private final Catalogue catalogue = new CatalogueSketch()
                .part(PartSketch.bought("A-1").cost("10.00"))
                .position(PositionSketch.at("motor").line("motor", "A-1", "1"))
                .draw();
        private final CostedBill kit = Pricing.cost(new OrderSketch(catalogue).bill(), catalogue);

        /** By hand: 612 minutes at 1000 an hour are 10200; 115 % of it are 11730. */
        @Test
        void costs_its_minutes_at_the_rate_of_an_hour_with_overhead_on_labour() {
            PriceBookSketch prices =
                    new PriceBookSketch().labour("1000").overhead("115", "0").assembling("612");
            FullCost cost = FullCosting.cost(kit, prices.book(), extra -> BigDecimal.ZERO);
            assertThat(cost.kit().of(Element.KIT_ASSEMBLY)).isEqualByComparingTo("10200");
            assertThat(cost.kit().of(Element.OVERHEAD)).isEqualByComparingTo("11730");
            assertThat(cost.kit().total()).isEqualByComparingTo("21940");
        }

        @Test
        void is_put_together_at_no_position_where_only_a_part_of_the_donor_vehicle_lies() {
            Catalogue reusing = new CatalogueSketch()
                    .part(PartSketch.bought("A-1").cost("10.00"))
                    .part(PartSketch.reused("R-1"))
                    .position(PositionSketch.at("motor").line("motor", "A-1", "1"))
                    .position(PositionSketch.at("bell").line("bell", "R-1", "1"))
                    .draw();
            PriceBookSketch prices = new PriceBookSketch().labour("1000").assembling("6");
            FullCost cost = FullCosting.cost(
                    Pricing.cost(new OrderSketch(reusing).bill(), reusing), prices.book(), extra -> BigDecimal.ZERO);
            assertThat(cost.kit().of(Element.KIT_ASSEMBLY))
                    .as("6 minutes at 1000 an hour for the motor alone")
                    .isEqualByComparingTo("100");
        }

        @Test
        void costs_nothing_where_the_workshop_has_not_told_of_it() {
            PriceBookSketch prices = new PriceBookSketch().labour("1000").overhead("115", "0");
            FullCost cost = FullCosting.cost(kit, prices.book(), extra -> BigDecimal.ZERO);
            assertThat(cost.tasks()).isEmpty();
            assertThat(cost.kit().total()).isEqualByComparingTo("10.00");
        }
    }

    @Nested
    @DisplayName("in a demo kit")
    class OfTheDemo {

        private final FullCost cost = demo("bl-1001");
        private final PriceBook prices = cost.prices();

        /** Minutes of each position in the kit times 27.00 an hour, each rounded to the cent. */
        @Test
        void is_put_together_at_each_position_that_has_something() {
            BigDecimal expected = cost.costed().bill().items().stream()
                    .filter(item -> item.origin() instanceof Origin.OwnLine)
                    .map(item -> item.position())
                    .distinct()
                    .map(position -> prices.kitWork()
                            .minutes(position.stage())
                            .multiply(new BigDecimal("27.00"))
                            .divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP))
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            assertThat(expected).isGreaterThan(BigDecimal.valueOf(100));
            assertThat(cost.kit().of(Element.KIT_ASSEMBLY)).isEqualByComparingTo(expected);
        }

        /**
         * By hand, crates of a kit with two strings: 84 + 84 + 215 + 58 + 112 + 215 + 112 + 58 + 64 + 6.80 + 58 + 6.80 + 6.80 =
         * 1080.40; a kit with one string takes none of modules and of boxes in the rear.
         */
        @Test
        void leaves_in_its_usual_crates() {
            assertThat(cost.kit().of(Element.CRATES)).isEqualByComparingTo("1080.40");
            assertThat(demo("bl-1002").kit().of(Element.CRATES)).isLessThan(new BigDecimal("1080.40"));
        }

        /** By hand: all groups of tests but none left out, 280 minutes at 27.00 an hour. */
        @Test
        void is_tested_by_every_group_that_has_a_test_for_it() {
            BigDecimal withOutlet = cost.kit().of(Element.KIT_TEST);
            assertThat(withOutlet).isEqualByComparingTo("126.00");
            assertThat(demo("bl-1002").kit().of(Element.KIT_TEST))
                    .as("no V2L outlet: 15 minutes less")
                    .isEqualByComparingTo("119.25");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1002", "bl-1010", "bl-2001"})
    void stands_in_the_bridge_in_the_elements_and_in_the_full_cost_alike(String order) {
        FullCost cost = demo(order);
        assertThat(Bridge.of(cost).full()).isEqualByComparingTo(cost.kit().total());
        Family family = cost.costed().bill().resolved().choices().family();
        assertThat(KitTask.of(family, cost.costed().catalogue(), cost.prices()))
                .as("all that may be")
                .containsAll(cost.tasks());
    }
}
