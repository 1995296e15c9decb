package boltlore.trades.costing;

import static boltlore.trades.costing.SketchedPart.bought;
import static boltlore.trades.costing.SketchedPart.made;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What is to buy")
class PurchaseTest {

    @Test
    @DisplayName("adds all places of a part, then scrap, then whole packs")
    void packs() {
        Purchase purchase = only(bought("BO-8").cost("0.10").scrap("4").from("Brennock", "50", null), "30", "66");

        assertThat(purchase.needed()).isEqualByComparingTo("96");
        assertThat(purchase.withScrap()).isEqualByComparingTo("100");
        assertThat(purchase.ordered()).isEqualByComparingTo("100");
        assertThat(purchase.cost()).isEqualByComparingTo("10.00");
    }

    @Test
    @DisplayName("takes one pack more where the scrap goes just beyond the last one")
    void one_pack_more() {
        Purchase purchase = only(bought("BO-8").scrap("4").from("Brennock", "50", null), "30", "66.1");

        assertThat(purchase.ordered()).isEqualByComparingTo("150");
    }

    @Test
    @DisplayName("goes up to the least order, in whole packs")
    void least_order() {
        Purchase purchase = only(bought("BO-8").from("Brennock", "20", "50"), "1", "2");

        assertThat(purchase.ordered()).isEqualByComparingTo("60");
    }

    @Test
    @DisplayName("keeps to the need where that is above the least order")
    void above_least_order() {
        Purchase purchase = only(bought("BO-8").from("Brennock", null, "2"), "1", "2");

        assertThat(purchase.ordered()).isEqualByComparingTo("3");
    }

    @Test
    @DisplayName("stands by supplier, and first what must be ordered first")
    void order() {
        CostedBill costed = new SmallKit()
                .know(bought("AA-1").days(5).from("Tarnholt", null, null))
                .know(bought("BB-1").days(9).from("Tarnholt", null, null))
                .know(bought("CC-1").days(1).from("Brennock", null, null))
                .take("drive", "AA-1", "1")
                .take("drive", "BB-1", "1")
                .take("drive", "CC-1", "1")
                .priced();

        assertThat(Purchase.of(costed))
                .extracting(purchase -> purchase.part().number().text())
                .containsExactly("CC-1", "BB-1", "AA-1");
    }

    @Test
    @DisplayName("holds what goes into made parts, and nothing that is made")
    void inside_made() {
        CostedBill costed = new SmallKit()
                .know(made("CR-1").contains("TU-1", "2"))
                .know(bought("TU-1"))
                .take("drive", "CR-1", "2")
                .priced();

        assertThat(Purchase.of(costed)).extracting(Purchase::needed).containsExactly(new BigDecimal("4"));
    }

    private static Purchase only(SketchedPart part, String here, String there) {
        CostedBill costed = new SmallKit()
                .know(part)
                .take("drive", "BO-8", here)
                .take("battery", "BO-8", there)
                .priced();
        List<Purchase> purchases = Purchase.of(costed);
        assertThat(purchases).hasSize(1);
        return purchases.get(0);
    }
}
