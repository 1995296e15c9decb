package boltlore.trades.costing.quote;

import static boltlore.trades.costing.SketchedPart.bought;
import static boltlore.trades.costing.SketchedPart.made;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.catalogue.SalesTax;
import boltlore.faults.Outcome;
import boltlore.measure.Wording;
import boltlore.trades.costing.PriceBookSketch;
import boltlore.trades.costing.SmallKit;
import boltlore.trades.costing.cost.CostedItem;
import boltlore.trades.costing.cost.Elements;
import boltlore.trades.costing.cost.FullCost;
import boltlore.trades.costing.cost.FullCosting;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** What holds for any costs, shares and discounts. */
class QuotingLawsTest {

    private static final BigDecimal CENT = new BigDecimal("0.01");
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final LocalDate ON = LocalDate.of(2026, 3, 9);

    @Provide
    Arbitrary<BigDecimal> amount() {
        return Arbitraries.bigDecimals()
                .between(BigDecimal.ZERO, new BigDecimal("99999"))
                .ofScale(2);
    }

    private static PriceBookSketch prices() {
        return new PriceBookSketch()
                .labour("31.70")
                .lot(7)
                .overhead("115", "4")
                .delivery("Brennock Fixings", null, "3.3", "17.77", 3);
    }

    private static FullCost cost(List<BigDecimal> costs, PriceBookSketch prices) {
        SmallKit kit = new SmallKit().know(made("MA-1").cost("0.33").scrap("3").operation("bend", "11", "1.7"));
        kit.take("battery", "MA-1", "3");
        for (int i = 0; i < costs.size(); i++) {
            kit.know(bought("BO-" + i).cost(costs.get(i).toPlainString()).scrap("4"));
            kit.take("drive", "BO-" + i, "1.37");
        }
        return FullCosting.cost(kit.priced(), prices.book(), extra -> BigDecimal.ZERO);
    }

    private static Quotation quotation(FullCost cost, int discountPercent) {
        QuoteRequest asked = new QuoteRequest(ON, BigDecimal.valueOf(discountPercent), null);
        if (Quoting.calculate(cost, asked, 1) instanceof Outcome.Sound<Calculation> sound) {
            return sound.value().quotation();
        }
        throw new AssertionError("No currency was asked for");
    }

    @Property(tries = 200)
    void the_price_never_falls_when_a_part_is_added(
            @ForAll("amounts") @Size(min = 1, max = 6) List<BigDecimal> costs, @ForAll @IntRange(max = 90) int margin) {
        PriceBookSketch prices = prices().margin(String.valueOf(margin)).roundedUpTo("5");
        Quotation fewer = quotation(cost(costs.subList(1, costs.size()), prices), 3);
        Quotation more = quotation(cost(costs, prices), 3);
        assertThat(more.total()).isGreaterThanOrEqualTo(fewer.total());
    }

    @Provide
    Arbitrary<List<BigDecimal>> amounts() {
        return amount().list().ofMinSize(1).ofMaxSize(6);
    }

    @Property(tries = 200)
    void elements_sub_systems_and_rows_add_up_to_the_same_cent(@ForAll("amounts") List<BigDecimal> costs) {
        FullCost cost = cost(costs, prices());
        BigDecimal rows = cost.rows().stream()
                .map(CostedItem::elements)
                .map(Elements::total)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal subSystems = Elements.sum(cost.bySubSystem().values()).total();
        assertThat(cost.kit().total()).isEqualByComparingTo(rows).isEqualByComparingTo(subSystems);
        assertThat(cost.kit().amounts().values())
                .allSatisfy(amount ->
                        assertThat(amount.stripTrailingZeros().scale()).isLessThanOrEqualTo(2));
    }

    @Property(tries = 200)
    void a_margin_and_the_mark_up_that_belongs_to_it_make_the_same_price(
            @ForAll("amount") BigDecimal amount, @ForAll @IntRange(max = 90) int margin) {
        BigDecimal markUp = BigDecimal.valueOf(margin)
                .multiply(HUNDRED)
                .divide(BigDecimal.valueOf(100L - margin), MathContext.DECIMAL128);
        BigDecimal byMargin = quotation(cost(List.of(amount), prices().margin(String.valueOf(margin))), 0)
                .kitPrice();
        BigDecimal byMarkUp = quotation(cost(List.of(amount), prices().markUp(markUp.toPlainString())), 0)
                .kitPrice();
        assertThat(byMargin).isCloseTo(byMarkUp, within(CENT));
    }

    @Property
    void discount_comes_first_and_tax_on_what_is_left(
            @ForAll("amount") BigDecimal amount,
            @ForAll @IntRange(max = 95) int discount,
            @ForAll @IntRange(max = 27) int tax) {
        Quotation quotation = new Quotation(
                ON,
                ON,
                Currency.getInstance("EUR"),
                null,
                amount,
                List.of(),
                BigDecimal.valueOf(discount),
                new SalesTax(Wording.english("VAT"), BigDecimal.valueOf(tax), Wording.english("Invented.")),
                1);
        BigDecimal left = amount.multiply(BigDecimal.valueOf(100L - discount)).divide(HUNDRED);
        assertThat(quotation.net().add(quotation.discount())).isEqualByComparingTo(amount);
        assertThat(quotation.net()).isCloseTo(left, within(CENT));
        assertThat(quotation.taxAmount())
                .isCloseTo(quotation.net().multiply(BigDecimal.valueOf(tax)).divide(HUNDRED), within(CENT));
        assertThat(quotation.total()).isEqualByComparingTo(quotation.net().add(quotation.taxAmount()));
    }
}
