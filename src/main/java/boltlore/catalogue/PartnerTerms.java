package boltlore.catalogue;

import boltlore.measure.DeliveryTerm;
import java.math.BigDecimal;
import java.util.Currency;
import org.jspecify.annotations.Nullable;

/**
 * What is agreed with one partner.
 *
 * @param profit or null: the workshop's usual one
 * @param currency that the partner is quoted in, or null: the workshop's
 * @param tax in place of the market's, or null
 * @param delivery in place of the workshop's usual term, or null
 */
public record PartnerTerms(
        String partner,
        @Nullable Profit profit,
        BigDecimal discountPercent,
        @Nullable Currency currency,
        @Nullable SalesTax tax,
        @Nullable DeliveryTerm delivery) {}
