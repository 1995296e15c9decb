package boltlore.catalogue;

import boltlore.measure.Wording;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How the workshop works out what a kit costs in full, and how it sells it. Amounts are in the workshop's currency.
 *
 * @param madeCost what the cost of a made part in the part master holds
 * @param kitWork what assembling a kit takes
 * @param partners terms of those partners that have their own
 * @param taxes by market; a market without an entry is quoted without a tax
 * @param rates of other currencies, in the order of the file
 * @param validDays calendar days that a quotation is held
 * @param excluded what a quotation does not include, in sentences for customers
 * @param subSystems how customers call the sub-systems
 */
public record PriceBook(
        LabourRates labour,
        MadeCost madeCost,
        Lots lots,
        Overhead overhead,
        KitWork kitWork,
        Landing landing,
        Profit profit,
        PriceStep step,
        Map<String, PartnerTerms> partners,
        Map<String, SalesTax> taxes,
        List<ExchangeRate> rates,
        int validDays,
        List<Wording> excluded,
        Map<String, Wording> subSystems,
        SellingTerms selling) {

    /** The newest rate of that currency, whether or not it still holds; empty where there is none. */
    public Optional<ExchangeRate> newestRate(Currency currency) {
        return rates.stream()
                .filter(rate -> rate.currency().equals(currency))
                .max(Comparator.comparing(ExchangeRate::date));
    }

    /** The sub-system in a customer's words; its own name where the workshop gives no others. */
    public String called(String subSystem, String language) {
        Wording says = subSystems.get(subSystem);
        return says == null ? subSystem : says.in(language);
    }
}
