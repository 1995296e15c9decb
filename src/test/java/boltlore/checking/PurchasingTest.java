package boltlore.checking;

import static boltlore.sketch.PartSketch.bought;
import static boltlore.sketch.PartSketch.made;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Buying;
import boltlore.catalogue.Making;
import boltlore.catalogue.Offer;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a part costs, where it comes from, how it is made. */
class PurchasingTest {

    @Nested
    class Cost {

        @Test
        void nothing_costs_nothing() {
            assertThat(Remarked.in(bought("P-1").cost("0"))).containsExactly("part P-1: costs nothing");
            assertThat(Remarked.in(bought("P-1").cost("0.01"))).isEmpty();
        }

        @Test
        void a_made_assembly_may_add_nothing_to_what_its_parts_cost() {
            assertThat(Remarked.in(made("A-1").cost("0").contains("P-1", "2"), bought("P-1")))
                    .isEmpty();
        }

        @Test
        void what_comes_inside_a_bought_assembly_is_paid_for_with_it() {
            assertThat(Remarked.in(
                            bought("A-1").contains("P-1", "2"), bought("P-1").cost("0")))
                    .isEmpty();
            assertThat(Remarked.in(bought("A-1").contains("P-1", "2"), bought("P-1")))
                    .containsExactly("part P-1: cost counted twice");
        }

        @Test
        void a_bought_assembly_itself_has_a_price() {
            assertThat(Remarked.in(
                            bought("A-1").cost("0").contains("P-1", "2"),
                            bought("P-1").cost("0")))
                    .containsExactly("part A-1: costs nothing");
        }
    }

    @Nested
    class Bought {

        @Test
        void at_prices_that_do_not_rise_with_the_quantity() {
            assertThat(Remarked.in(bought("P-1").buying(offered("1.00", "1.00"))))
                    .isEmpty();
            assertThat(Remarked.in(bought("P-1").buying(offered("1.00", "1.01"))))
                    .containsExactly("part P-1: price that rises with the quantity");
        }

        private static Buying offered(String few, String many) {
            BigDecimal one = new BigDecimal(few);
            BigDecimal ten = new BigDecimal(many);
            return Buying.of(List.of(new Offer(
                    "Supplier A",
                    "A-1",
                    Currency.getInstance("EUR"),
                    7,
                    null,
                    null,
                    List.of(
                            new Offer.PriceBreak(BigDecimal.ONE, one, one),
                            new Offer.PriceBreak(BigDecimal.TEN, ten, ten)))));
        }

        @Test
        void from_nobody() {
            assertThat(Remarked.in(bought("P-1").buying(null)))
                    .containsExactly("part P-1: bought, but not from whom or when");
        }

        @Test
        void or_only_begun() {
            assertThat(Remarked.in(bought("P-1").buying(new Buying("Supplier A", "?", null, null))))
                    .containsExactly("part P-1: still holds the placeholder");
            assertThat(Remarked.in(
                            bought("P-1").buying(new Buying("Supplier A", "?", null, null)),
                            bought("P-2").buying(new Buying("Supplier A", "?", null, null))))
                    .hasSize(2)
                    .allMatch(remark -> remark.contains("placeholder"));
            assertThat(Remarked.in(bought("P-1").buying(new Buying("Supplier A", "A?", null, null))))
                    .isEmpty();
        }

        @Test
        void or_with_the_cost_or_the_mass_that_stands_for_any() {
            assertThat(Remarked.in(bought("P-1").cost("1.111")))
                    .containsExactly("part P-1: still holds the placeholder");
            assertThat(Remarked.in(bought("P-1").massKg("0.1111")))
                    .containsExactly("part P-1: still holds the placeholder");
            assertThat(Remarked.in(bought("P-1").cost("1.11").massKg("0.111"))).isEmpty();
        }

        @Test
        void by_no_code() {
            assertThat(Remarked.in(bought("P-1").buying(new Buying("Supplier A", "", null, null))))
                    .containsExactly("part P-1: bought, but not from whom or when");
        }

        @Test
        void in_no_time() {
            assertThat(Remarked.in(bought("P-1").leadDays(0)))
                    .containsExactly("part P-1: bought, but not from whom or when");
            assertThat(Remarked.in(bought("P-1").leadDays(1))).isEmpty();
        }

        @Test
        void inside_a_bought_assembly_from_whom_does_not_matter() {
            assertThat(Remarked.in(
                            bought("A-1").contains("P-1", "1"),
                            bought("P-1").cost("0").buying(null).leadDays(0)))
                    .isEmpty();
        }

        @ParameterizedTest
        @CsvSource({"50, 100, false", "50, 50, false", "50, 75, true", "50, 20, true", "0, 10, true"})
        void the_least_order_is_whole_packs(String packOf, String minimum, boolean doubtful) {
            Buying buying = new Buying("Supplier A", "A-1", new BigDecimal(packOf), new BigDecimal(minimum));
            assertThat(Remarked.in(bought("P-1").buying(buying)))
                    .isEqualTo(doubtful ? List.of("part P-1: pack against minimum order") : List.of());
        }
    }

    @Nested
    class Made {

        private static final Making SOUND = made("P-1").draw().making();
        private static final String REMARK = "part P-1: made, but not how";

        @Test
        void without_a_drawing() {
            assertThat(Remarked.in(
                            made("P-1").making(new Making(null, SOUND.material(), List.of(), SOUND.operations()))))
                    .containsExactly(REMARK);
        }

        @Test
        void without_an_operation() {
            assertThat(Remarked.in(
                            made("P-1").making(new Making(SOUND.drawing(), SOUND.material(), List.of(), List.of()))))
                    .containsExactly(REMARK);
        }

        @Test
        void without_a_material_unless_it_is_put_together_from_parts() {
            Making ofNothing = new Making(SOUND.drawing(), null, List.of(), SOUND.operations());
            assertThat(Remarked.in(made("P-1").making(ofNothing))).containsExactly(REMARK);
            assertThat(Remarked.in(made("P-1").making(ofNothing).contains("P-2", "2"), bought("P-2")))
                    .isEmpty();
        }
    }
}
