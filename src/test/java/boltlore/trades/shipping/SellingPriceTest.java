package boltlore.trades.shipping;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.SellingTerms;
import boltlore.demo.Demo;
import boltlore.order.Extra;
import boltlore.trades.costing.quote.Quotation;
import boltlore.trades.costing.quote.QuotedExtra;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The price that customs values are made of")
class SellingPriceTest {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 9);

    private static Extra extra(String says) {
        return new Extra(null, says, BigDecimal.ONE, "each", null, null, false, "Wanted.");
    }

    private static Quotation quotation(String currency, String discount, String kit, String... extras) {
        List<QuotedExtra> quoted = List.of(extras).stream()
                .map(price -> new QuotedExtra(null, "Rack", BigDecimal.ONE, "each", false, new BigDecimal(price)))
                .toList();
        return new Quotation(
                DAY,
                DAY.plusDays(30),
                Currency.getInstance(currency),
                null,
                new BigDecimal(kit),
                quoted,
                new BigDecimal(discount),
                null,
                10);
    }

    @Test
    void is_what_is_left_after_discount_shared_so_that_no_cent_is_lost() {
        SellingPrice price = SellingPrice.of(
                quotation("EUR", "3", "1000.01", "0.33", "99.99"), List.of(extra("Rack"), extra("Roof")));
        assertThat(price.total()).isEqualByComparingTo("1067.32");
        assertThat(price.kit()).isEqualByComparingTo("970.01");
        assertThat(price.extras().values()).containsExactly(new BigDecimal("0.32"), new BigDecimal("96.99"));
    }

    @Test
    void adds_up_equal_extras() {
        SellingPrice price =
                SellingPrice.of(quotation("EUR", "0", "10.00", "1.50", "1.50"), List.of(extra("Rack"), extra("Rack")));
        assertThat(price.extras().values()).containsExactly(new BigDecimal("3.00"));
        assertThat(price.total()).isEqualByComparingTo("13.00");
    }

    @Test
    void knows_currencies_without_a_minor_unit() {
        assertThat(SellingPrice.of(quotation("JPY", "0", "5000", "7"), List.of(extra("Rack")))
                        .total())
                .isEqualByComparingTo("5007");
    }

    /** Lead-acid accumulators are 8507.10, lithium-ion ones 8507.60 (Harmonised System 2022, from memory). */
    @Test
    void is_shared_out_by_the_longest_code_that_fits() {
        SellingTerms terms = new SellingTerms(
                null, null, List.of(value("8507.10", "6.50"), value("8507", "75"), value("8544", "60")));
        assertThat(CustomsMaker.perKg(terms, "8507.10")).isEqualTo("6.50");
        assertThat(CustomsMaker.perKg(terms, "8507.60")).isEqualTo("75");
    }

    @Test
    void of_a_demo_kit_tells_lead_acid_batteries_from_lithium_ones() {
        SellingTerms terms = Objects.requireNonNull(Demo.catalogue().prices()).selling();
        assertThat(CustomsMaker.perKg(terms, Tariff.LEAD_ACID.code()))
                .isLessThan(CustomsMaker.perKg(terms, Tariff.LITHIUM_ION.code()));
    }

    private static SellingTerms.GoodsValue value(String hs, String perKg) {
        return new SellingTerms.GoodsValue(hs, new BigDecimal(perKg));
    }

    @Test
    void of_extras_reaches_the_customs_lines() {
        ShippedKit kit = new ShippedKit()
                .part("A", "5", 1)
                .extra(new Extra(
                        null,
                        "Rack",
                        BigDecimal.ONE,
                        "each",
                        BigDecimal.ONE,
                        new BigDecimal("30.00"),
                        false,
                        "Wanted."));
        List<CustomsLine> lines = kit.shipment().customs();
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0).hs()).isEmpty();
        assertThat(lines.get(0).value()).isEqualByComparingTo("30.00");
        assertThat(lines.get(1).value()).as("cost 1.00 and 40 % on it").isEqualByComparingTo("1.40");
    }
}
