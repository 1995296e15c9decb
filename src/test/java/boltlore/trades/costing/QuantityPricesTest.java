package boltlore.trades.costing;

import static boltlore.sketch.PartSketch.bought;
import static boltlore.sketch.PositionSketch.at;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Buying;
import boltlore.catalogue.Offer;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.OrderSketch;
import boltlore.sketch.PartSketch;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Order quantities, packs and price breaks multiply out as on any supplier's invoice: common practice, no source. */
@DisplayName("A part with price breaks")
class QuantityPricesTest {

    private static final Currency EUR = Currency.getInstance("EUR");

    @ParameterizedTest
    @CsvSource({
        "9, , , 0, 1.00, 9.00",
        "10, , , 0, 0.80, 8.00",
        // 9 / (1 - 0.1) = 10
        "9, , , 10, 0.80, 8.00",
        // two packs of 8 are 16
        "9, 8, , 0, 0.80, 7.20",
        "8, 8, , 0, 1.00, 8.00",
        "2, , 10, 0, 0.80, 1.60",
    })
    void costs_what_the_quantity_that_is_ordered_costs(
            int needed,
            @Nullable BigDecimal pack,
            @Nullable BigDecimal minimum,
            String scrap,
            BigDecimal unitCost,
            BigDecimal cost) {
        CostedBill bill = costed(hose(pack, minimum).scrap(scrap), needed);

        assertThat(bill.rows().get(0).unitCost()).isEqualByComparingTo(unitCost);
        assertThat(bill.totals().bought()).isEqualByComparingTo(cost);
        assertThat(Purchase.of(bill).get(0).part().cost()).isEqualByComparingTo(unitCost);
    }

    @Test
    void is_counted_over_all_its_places_in_the_kit() {
        CatalogueSketch catalogue = new CatalogueSketch()
                .part(hose(null, null))
                .position(at("front").line("front", "HO-1", "6"))
                .position(at("rear").line("rear", "HO-1", "4"));
        OrderSketch order = new OrderSketch(catalogue.draw());

        assertThat(Pricing.cost(order.bill(), order.plan().catalogue()).totals().bought())
                .isEqualByComparingTo("8.00");
    }

    @Test
    void is_not_counted_where_it_comes_inside_something_bought() {
        CatalogueSketch catalogue = new CatalogueSketch()
                .part(hose(null, null))
                .part(bought("SET").cost("50").contains("HO-1", "4").stocked())
                .position(at("front").line("front", "HO-1", "6"))
                .position(at("rear").line("rear", "SET", "1"));
        OrderSketch order = new OrderSketch(catalogue.draw());

        assertThat(Pricing.cost(order.bill(), order.plan().catalogue()).totals().bought())
                .isEqualByComparingTo("56.00");
    }

    private static PartSketch hose(@Nullable BigDecimal pack, @Nullable BigDecimal minimum) {
        List<Offer.PriceBreak> breaks = List.of(priceBreak("1", "1.00"), priceBreak("10", "0.80"));
        return bought("HO-1").buying(Buying.of(List.of(new Offer("Supplier A", "A-1", EUR, 7, pack, minimum, breaks))));
    }

    private static Offer.PriceBreak priceBreak(String from, String cost) {
        return new Offer.PriceBreak(new BigDecimal(from), new BigDecimal(cost), new BigDecimal(cost));
    }

    private static CostedBill costed(PartSketch part, int needed) {
        OrderSketch order = new OrderSketch(new CatalogueSketch()
                .part(part)
                .position(at("front").line("front", "HO-1", Integer.toString(needed)))
                .draw());
        return Pricing.cost(order.bill(), order.plan().catalogue());
    }
}
