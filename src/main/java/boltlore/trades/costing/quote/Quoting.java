package boltlore.trades.costing.quote;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.ExchangeRate;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.PartnerTerms;
import boltlore.catalogue.PriceBook;
import boltlore.catalogue.Profit;
import boltlore.catalogue.Role;
import boltlore.catalogue.SalesTax;
import boltlore.faults.Outcome;
import boltlore.measure.DeliveryTerm;
import boltlore.measure.Wording;
import boltlore.order.Extra;
import boltlore.order.OrderTerms;
import boltlore.trades.costing.MinorUnit;
import boltlore.trades.costing.Price;
import boltlore.trades.costing.cost.CostedExtra;
import boltlore.trades.costing.cost.FullCost;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Makes a quotation of a full cost: what is asked for this once comes first, then the order's terms, the partner's, the workshop's. */
public final class Quoting {

    private final FullCost cost;
    private final PriceBook prices;
    private final Catalogue catalogue;
    private final QuoteRequest asked;
    private final int leadDays;
    private final OrderTerms agreed;
    private final @Nullable PartnerTerms terms;

    private Quoting(FullCost cost, QuoteRequest asked, int leadDays) {
        this.cost = cost;
        this.prices = cost.prices();
        this.catalogue = cost.costed().catalogue();
        this.asked = asked;
        this.leadDays = leadDays;
        this.agreed = cost.costed().bill().order().terms();
        this.terms = prices.partners().get(cost.costed().bill().order().partner());
    }

    /** The calculation; a fault where the wanted currency has no rate that holds on the day. */
    public static Outcome<Calculation> calculate(FullCost cost, QuoteRequest asked, int leadDays) {
        Quoting quoting = new Quoting(cost, asked, leadDays);
        Currency home = quoting.catalogue.workshop().currency();
        return Conversion.rate(cost.prices(), home, quoting.currency(), asked.on())
                .then(rate -> Outcome.sound(quoting.calculation(rate.orElse(null))));
    }

    private Calculation calculation(@Nullable ExchangeRate rate) {
        BigDecimal reckoned = price(cost.kit().total());
        BigDecimal kitPrice = unit().round(prices.step().round(converted(reckoned, rate)));
        List<QuotedExtra> extras = cost.extras().stream()
                .map(extra -> QuotedExtra.of(extra.extra(), unit().round(converted(price(extra), rate))))
                .toList();
        Quotation quotation = new Quotation(
                asked.on(),
                validUntil(rate),
                currency(),
                rate,
                kitPrice,
                extras,
                discount(),
                tax(),
                leadDays,
                cores(rate),
                new Quotation.Terms(asked.version(), delivery(), payment()));
        return new Calculation(cost, profit(), reckoned, quotation);
    }

    /** For each part of which the maker takes an old one back, whatever brings it. */
    private List<Quotation.CoreCredit> cores(@Nullable ExchangeRate rate) {
        return cost.costed().bill().quantities().entrySet().stream()
                .filter(part -> catalogue.part(part.getKey()).upkeep().coreCredit() != null)
                .map(part -> new Quotation.CoreCredit(
                        part.getKey(),
                        part.getValue(),
                        unit().round(converted(
                                Objects.requireNonNull(
                                        catalogue.part(part.getKey()).upkeep().coreCredit()),
                                rate))))
                .toList();
    }

    /** By mark-up or margin, in the workshop's currency. */
    private BigDecimal price(BigDecimal fullCost) {
        MinorUnit home = new MinorUnit(catalogue.workshop().currency());
        Profit profit = profit();
        return profit.isMargin()
                ? Price.forMargin(fullCost, profit.percent(), home)
                : Price.withMarkUp(fullCost, profit.percent(), home);
    }

    /** The agreed price where the order has one. */
    private BigDecimal price(CostedExtra costed) {
        Extra extra = costed.extra();
        if (extra.suppliedByCustomer()) {
            return BigDecimal.ZERO;
        }
        return extra.price() == null
                ? price(costed.elements().total())
                : extra.quantity().multiply(extra.price());
    }

    private static BigDecimal converted(BigDecimal amount, @Nullable ExchangeRate rate) {
        return rate == null ? amount : amount.multiply(rate.forOne());
    }

    private Profit profit() {
        return terms == null || terms.profit() == null ? prices.profit() : terms.profit();
    }

    private BigDecimal discount() {
        if (asked.discountPercent() != null) {
            return asked.discountPercent();
        }
        if (agreed.discountPercent() != null) {
            return agreed.discountPercent();
        }
        return terms == null ? BigDecimal.ZERO : terms.discountPercent();
    }

    private Currency currency() {
        if (asked.currency() != null) {
            return asked.currency();
        }
        if (agreed.currency() != null) {
            return agreed.currency();
        }
        Currency partners = terms == null ? null : terms.currency();
        return partners == null ? catalogue.workshop().currency() : partners;
    }

    private MinorUnit unit() {
        return new MinorUnit(currency());
    }

    private @Nullable SalesTax tax() {
        SalesTax agreed = terms == null ? null : terms.tax();
        String market = cost.costed()
                .bill()
                .resolved()
                .choices()
                .inRole(Role.MARKET)
                .map(OptionValue::value)
                .orElse("");
        return agreed != null ? agreed : prices.taxes().get(market);
    }

    private @Nullable DeliveryTerm delivery() {
        if (agreed.delivery() != null) {
            return agreed.delivery();
        }
        return terms != null && terms.delivery() != null
                ? terms.delivery()
                : prices.selling().delivery();
    }

    private String payment() {
        Wording usual = prices.selling().payment();
        String language = cost.costed().bill().order().language();
        return !agreed.payment().isEmpty() ? agreed.payment() : usual == null ? "" : usual.in(language);
    }

    /** No longer than the exchange rate that the price rests on. */
    private LocalDate validUntil(@Nullable ExchangeRate rate) {
        LocalDate own = asked.on().plusDays(prices.validDays());
        return rate != null && rate.lastDay().isBefore(own) ? rate.lastDay() : own;
    }
}
