package boltlore.trades.costing.quote;

import static boltlore.trades.costing.SketchedPart.bought;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.faults.Outcome;
import boltlore.order.Extra;
import boltlore.order.OrderTerms;
import boltlore.trades.costing.PriceBookSketch;
import boltlore.trades.costing.SmallKit;
import boltlore.trades.costing.cost.FullCosting;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("A quotation")
class QuotingTest {

    private static final LocalDate ON = LocalDate.of(2026, 3, 9);

    private static SmallKit kit(String cost) {
        return new SmallKit().know(bought("DU-1").cost(cost)).take("drive", "DU-1", "1");
    }

    private static Outcome<Calculation> outcome(
            PriceBookSketch prices, SmallKit kit, @Nullable String discount, @Nullable String currency) {
        QuoteRequest asked = new QuoteRequest(
                ON,
                discount == null ? null : new BigDecimal(discount),
                currency == null ? null : Currency.getInstance(currency));
        return Quoting.calculate(FullCosting.cost(kit.priced(), prices.book(), extra -> BigDecimal.ZERO), asked, 41);
    }

    private static Calculation calculation(
            PriceBookSketch prices, SmallKit kit, @Nullable String discount, @Nullable String currency) {
        if (outcome(prices, kit, discount, currency) instanceof Outcome.Sound<Calculation> sound) {
            return sound.value();
        }
        throw new AssertionError(
                outcome(prices, kit, discount, currency).faults().toString());
    }

    private static Quotation quotation(PriceBookSketch prices, SmallKit kit) {
        return calculation(prices, kit, null, null).quotation();
    }

    static Stream<CheckRow> wantedMargin() {
        return CheckTable.rows("cost-and-price.csv", "CO-04");
    }

    static Stream<CheckRow> markUp() {
        return CheckTable.rows("cost-and-price.csv", "CO-03");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("wantedMargin")
    void is_reckoned_by_a_margin_of_the_price(CheckRow row) {
        Quotation quotation = quotation(new PriceBookSketch().margin(row.text("margin_pct")), kit(row.text("cost")));
        assertThat(quotation.kitPrice()).isEqualByComparingTo(row.number("expected_price"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("markUp")
    void leaves_the_margin_that_belongs_to_its_mark_up(CheckRow row) {
        Calculation calculation =
                calculation(new PriceBookSketch().markUp(row.text("markup_pct")), kit("100.00"), null, null);
        assertThat(calculation.quotation().kitPrice()).isEqualByComparingTo("125.00");
        assertThat(calculation.marginLeftPercent()).isEqualByComparingTo(row.number("expected_margin_pct"));
    }

    @Test
    void rounds_the_price_of_the_kit_up_to_the_step() {
        PriceBookSketch prices = new PriceBookSketch().roundedUpTo("5");
        assertThat(quotation(prices, kit("100.01")).kitPrice()).isEqualByComparingTo("105.00");
        assertThat(quotation(prices, kit("100.00")).kitPrice()).isEqualByComparingTo("100.00");
    }

    @Test
    void takes_the_discount_off_kit_and_extras() {
        Quotation quotation = calculation(new PriceBookSketch(), withExtra("40.00", null), "10", null)
                .quotation();
        assertThat(quotation.listPrice()).isEqualByComparingTo("140.00");
        assertThat(quotation.discount()).isEqualByComparingTo("14.00");
        assertThat(quotation.net()).isEqualByComparingTo("126.00");
    }

    @Test
    void shows_an_extra_at_its_agreed_price_or_at_the_price_its_cost_makes() {
        PriceBookSketch prices = new PriceBookSketch().margin("20");
        assertThat(quotation(prices, withExtra("40.00", "45.00")).extras())
                .singleElement()
                .extracting(QuotedExtra::price)
                .isEqualTo(new BigDecimal("45.00"));
        assertThat(quotation(prices, withExtra("40.00", null)).extras())
                .singleElement()
                .extracting(QuotedExtra::price)
                .isEqualTo(new BigDecimal("50.00"));
    }

    private static SmallKit withExtra(String cost, @Nullable String price) {
        return kit("100.00")
                .extra(new Extra(
                        null,
                        "Roof rack",
                        BigDecimal.ONE,
                        "each",
                        new BigDecimal(cost),
                        price == null ? null : new BigDecimal(price),
                        false,
                        "Wanted."));
    }

    @Test
    void is_held_for_the_workshops_days() {
        assertThat(quotation(new PriceBookSketch(), kit("1")).validUntil()).isEqualTo(LocalDate.of(2026, 4, 8));
    }

    @Test
    void says_in_the_calculation_that_it_makes_a_loss() {
        Calculation calculation = calculation(new PriceBookSketch(), kit("100.00"), "5", null);
        assertThat(calculation.left()).isEqualByComparingTo("-5.00");
        assertThat(calculation.marginLeftPercent()).isEqualByComparingTo("-5.26");
    }

    @Nested
    @DisplayName("through a partner")
    class ThroughPartner {

        private final PriceBookSketch prices = new PriceBookSketch()
                .markUp("100")
                .partner("Valbrune", "50", "4", "GBP")
                .rate("GBP", "0.80", LocalDate.of(2026, 3, 1), 30);

        @Test
        void takes_the_partners_margin_discount_and_currency() {
            Quotation quotation = quotation(prices, kit("100.00").through("Valbrune"));
            assertThat(quotation.currency()).isEqualTo(Currency.getInstance("GBP"));
            assertThat(quotation.kitPrice()).isEqualByComparingTo("160.00");
            assertThat(quotation.discount()).isEqualByComparingTo("6.40");
        }

        @Test
        void takes_what_is_asked_for_before_the_partners_terms() {
            Quotation quotation = calculation(prices, kit("100.00").through("Valbrune"), "0", "EUR")
                    .quotation();
            assertThat(quotation.total()).isEqualByComparingTo("200.00");
            assertThat(quotation.rate()).isNull();
        }

        @Test
        void takes_what_is_agreed_for_the_order_before_the_partners_terms() {
            OrderTerms agreed = new OrderTerms(new BigDecimal("1"), Currency.getInstance("EUR"));
            Quotation quotation =
                    quotation(prices, kit("100.00").through("Valbrune").agreed(agreed));
            assertThat(quotation.total()).isEqualByComparingTo("198.00");
        }

        @Test
        void takes_the_partners_terms_for_what_the_order_leaves_open() {
            OrderTerms agreed = new OrderTerms(new BigDecimal("1"), null);
            Quotation quotation =
                    quotation(prices, kit("100.00").through("Valbrune").agreed(agreed));
            assertThat(quotation.total()).isEqualByComparingTo("158.40");
            assertThat(quotation.currency()).isEqualTo(Currency.getInstance("GBP"));
        }

        @Test
        void takes_what_is_asked_for_before_what_is_agreed() {
            OrderTerms agreed = new OrderTerms(new BigDecimal("1"), null);
            assertThat(calculation(prices, kit("100.00").agreed(agreed), "3", null)
                            .quotation()
                            .total())
                    .isEqualByComparingTo("194.00");
        }

        @Test
        void takes_the_workshops_terms_for_anyone_else() {
            assertThat(quotation(prices, kit("100.00")).total()).isEqualByComparingTo("200.00");
        }
    }

    @Nested
    @DisplayName("in another currency")
    class InAnotherCurrency {

        private final PriceBookSketch prices = new PriceBookSketch()
                .rate("GBP", "0.80", LocalDate.of(2026, 2, 1), 60)
                .rate("GBP", "0.90", LocalDate.of(2026, 3, 1), 20)
                .rate("GBP", "9.99", LocalDate.of(2026, 3, 10), 20)
                .rate("USD", "1.10", LocalDate.of(2026, 2, 1), 36)
                .rate("AUD", "1.60", LocalDate.of(2026, 2, 1), 35)
                .rate("CAD", "1.55", LocalDate.of(2026, 5, 10), 30)
                .rate("CAD", "1.50", LocalDate.of(2026, 3, 10), 30)
                .rate("JPY", "160", LocalDate.of(2026, 3, 1), 30);

        @Test
        void takes_the_newest_rate_that_has_begun() {
            Calculation calculation = calculation(prices, kit("100.00"), null, "GBP");
            assertThat(calculation.quotation().total()).isEqualByComparingTo("90.00");
            assertThat(calculation.netAtHome()).isEqualByComparingTo("100");
        }

        @Test
        void is_held_no_longer_than_the_rate() {
            assertThat(calculation(prices, kit("100.00"), null, "GBP")
                            .quotation()
                            .validUntil())
                    .isEqualTo(LocalDate.of(2026, 3, 21));
        }

        @Test
        void takes_a_rate_on_its_last_day() {
            assertThat(calculation(prices, kit("100.00"), null, "USD")
                            .quotation()
                            .validUntil())
                    .isEqualTo(ON);
        }

        @Test
        void has_the_minor_unit_of_that_currency() {
            assertThat(calculation(prices, kit("100.01"), null, "JPY")
                            .quotation()
                            .total()
                            .toPlainString())
                    .isEqualTo("16002");
        }

        @ParameterizedTest
        @CsvSource({
            "AUD, an exchange rate of AUD from 2026-02-01 that ran out on 2026-03-08",
            "CAD, no exchange rate of CAD before 2026-03-10",
            "CHF, no exchange rate of CHF"
        })
        void is_refused_without_a_rate_that_holds_on_the_day(String currency, String found) {
            assertThat(outcome(prices, kit("100.00"), null, currency).faults())
                    .singleElement()
                    .satisfies(fault -> {
                        assertThat(fault.found()).isEqualTo(found);
                        assertThat(fault.expected()).contains("2026-03-09");
                    });
        }
    }
}
