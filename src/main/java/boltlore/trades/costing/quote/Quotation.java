package boltlore.trades.costing.quote;

import boltlore.catalogue.ExchangeRate;
import boltlore.catalogue.SalesTax;
import boltlore.measure.DeliveryTerm;
import boltlore.measure.PartNumber;
import boltlore.measure.Percent;
import boltlore.trades.costing.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a customer is quoted. It holds no cost, no margin and no supplier, so nothing made of it alone can show one.
 * Amounts are in its currency, each rounded half-up to the minor unit, so that they add up as printed: discount first,
 * then tax on what is left.
 *
 * @param rate through which prices were turned into another currency, or null
 * @param kitPrice before discount
 * @param tax null where the workshop knows of none for the market
 * @param leadDays calendar days from the confirmed order to shipping
 * @param cores what is credited for old units that come back, outside the price
 * @param terms of payment and delivery, and which version it is
 */
public record Quotation(
        LocalDate on,
        LocalDate validUntil,
        Currency currency,
        @Nullable ExchangeRate rate,
        BigDecimal kitPrice,
        List<QuotedExtra> extras,
        BigDecimal discountPercent,
        @Nullable SalesTax tax,
        int leadDays,
        List<CoreCredit> cores,
        Terms terms) {

    /**
     * On what terms it is made.
     *
     * @param version of the order's quotation, from 1
     * @param delivery or null where nobody has said
     * @param payment when it is paid, in the order's language, or empty
     */
    public record Terms(int version, @Nullable DeliveryTerm delivery, String payment) {

        /** Of which nobody has said anything. */
        public static final Terms NONE = new Terms(1, null, "");
    }

    public Quotation {
        extras = List.copyOf(extras);
        cores = List.copyOf(cores);
    }

    /** Of a kit for which no old unit is taken back. */
    public Quotation(
            LocalDate on,
            LocalDate validUntil,
            Currency currency,
            @Nullable ExchangeRate rate,
            BigDecimal kitPrice,
            List<QuotedExtra> extras,
            BigDecimal discountPercent,
            @Nullable SalesTax tax,
            int leadDays) {
        this(on, validUntil, currency, rate, kitPrice, extras, discountPercent, tax, leadDays, List.of(), Terms.NONE);
    }

    /**
     * What is credited once the old units are back; the total due does not count on it.
     *
     * @param quantity of new ones in the kit, for each of which an old one may come back
     * @param each for one
     */
    public record CoreCredit(PartNumber part, BigDecimal quantity, BigDecimal each) {

        public BigDecimal all() {
            return quantity.multiply(each);
        }
    }

    /** All that can be credited. */
    public BigDecimal coreCredits() {
        return cores.stream().map(CoreCredit::all).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Before discount. */
    public BigDecimal extrasPrice() {
        return extras.stream().map(QuotedExtra::price).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Kit and extras. */
    public BigDecimal listPrice() {
        return kitPrice.add(extrasPrice());
    }

    /** What the discount takes off. */
    public BigDecimal discount() {
        return unit().round(listPrice().multiply(Percent.fraction(discountPercent)));
    }

    /** After discount, before tax. */
    public BigDecimal net() {
        return listPrice().subtract(discount());
    }

    public BigDecimal taxAmount() {
        BigDecimal percent = tax == null ? BigDecimal.ZERO : tax.percent();
        return unit().round(net().multiply(Percent.fraction(percent)));
    }

    /** What the customer pays. */
    public BigDecimal total() {
        return net().add(taxAmount());
    }

    private MinorUnit unit() {
        return new MinorUnit(currency);
    }
}
