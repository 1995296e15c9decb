package boltlore.trades.costing;

import static boltlore.trades.costing.SketchedPart.bought;
import static boltlore.trades.costing.SketchedPart.made;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.measure.PartNumber;
import boltlore.order.Extra;
import java.math.BigDecimal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Pricing a bill")
class PricingTest {

    @Test
    @DisplayName("rounds each row half-up to the cent, and totals add what is printed")
    void rounds_rows() {
        CostedBill costed = new SmallKit()
                .know(bought("BO-8").cost("0.085"))
                .know(bought("BO-9").cost("0.0849"))
                .take("drive", "BO-8", "1")
                .take("drive", "BO-8", "1")
                .take("drive", "BO-9", "1")
                .priced();

        assertThat(costed.rows()).extracting(ItemCost::extended).containsExactly(eur("0.09"), eur("0.09"), eur("0.08"));
        assertThat(costed.totals().bought()).isEqualByComparingTo("0.26");
    }

    @Test
    @DisplayName("adds scrap by dividing: 19 at 5 % scrap cost as much as 20")
    void scrap_divides() {
        CostedBill costed = new SmallKit()
                .know(bought("CB-1").cost("2.00").scrap("5"))
                .take("drive", "CB-1", "19")
                .priced();

        assertThat(costed.totals().cost()).isEqualByComparingTo("40.00");
    }

    @Test
    @DisplayName("adds an assembly's own cost to that of its parts")
    void assemblies_add() {
        assertThat(cradle(made("CR-1")).totals().cost()).isEqualByComparingTo("46.00");
    }

    @Test
    @DisplayName("takes the cost of a bought assembly for all of it")
    void bought_assemblies_are_all_of_it() {
        CostedBill costed = cradle(bought("CR-1"));

        assertThat(costed.totals().cost()).isEqualByComparingTo("40.00");
        assertThat(costed.totals().massKg()).isEqualByComparingTo("2");
        assertThat(Purchase.of(costed))
                .extracting(purchase -> purchase.part().number().text())
                .containsExactly("CR-1");
    }

    @Test
    @DisplayName("puts the coating of a coated part beside its cost, rounded for itself")
    void coating_stands_apart() {
        CostedBill costed = new SmallKit()
                .know(made("BR-1").cost("10.00").coated("black"))
                .know(made("BR-2").cost("10.00"))
                .take("drive", "BR-1", "1")
                .take("drive", "BR-2", "1")
                .priced();

        assertThat(costed.totals().made()).isEqualByComparingTo("20.00");
        assertThat(costed.totals().coating()).isEqualByComparingTo("2.01");
        assertThat(costed.totals().cost()).isEqualByComparingTo("22.01");
    }

    @Test
    @DisplayName("sub-totals by sub-system, in the workshop's order, add up to the kit")
    void sub_totals_add_up() {
        CostedBill costed = new SmallKit()
                .know(bought("BM-1").cost("612.335"))
                .know(made("BR-1").cost("10.005").coated("black"))
                .take("battery", "BM-1", "8")
                .take("drive", "BR-1", "3")
                .priced();

        assertThat(costed.bySubSystem().keySet()).containsExactly("drive", "battery");
        assertThat(costed.bySubSystem().values().stream().map(Totals::cost).reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo(costed.totals().cost());
    }

    @Test
    @DisplayName("an extra that is a part of the workshop costs what its parts cost")
    void extra_part() {
        CostedBill costed = new SmallKit()
                .know(made("CR-1").cost("40.00").contains("BR-1", "2"))
                .know(bought("BR-1").cost("3.00"))
                .extra(new Extra(new PartNumber("CR-1"), "", BigDecimal.ONE, "each", null, null, false, "a spare"))
                .priced();

        assertThat(costed.extrasCost()).isEqualByComparingTo("46.00");
        assertThat(Purchase.of(costed)).extracting(Purchase::extra).containsExactly(new BigDecimal("2"));
        assertThat(Job.of(costed)).extracting(Job::extra).containsExactly(BigDecimal.ONE);
    }

    private static CostedBill cradle(SketchedPart cradle) {
        return new SmallKit()
                .know(cradle.cost("40.00").contains("BR-1", "2"))
                .know(bought("BR-1").cost("3.00"))
                .take("drive", "CR-1", "1")
                .priced();
    }

    private static BigDecimal eur(String amount) {
        return new BigDecimal(amount);
    }
}
