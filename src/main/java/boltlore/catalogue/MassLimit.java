package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.List;

/**
 * How heavy a market lets a conversion become, and what else the rule behind it asks.
 *
 * @param mostPercent of the donor's mass before conversion: 120 lets it grow by a fifth
 * @param tolerancePercent how far a computed mass may be from the weighed one: nearer to the limit nothing is decided
 * @param country the one whose rule it is (ISO 3166 alpha-2), or empty where it holds in the whole market
 * @param because the rule behind it in a sentence, with its source
 */
public record MassLimit(
        BigDecimal mostPercent,
        BigDecimal tolerancePercent,
        String country,
        String because,
        List<MarketCondition> conditions) {

    /** Where nobody has told another: the difference of weighed and computed that is looked into. Common practice, no source. */
    public static final BigDecimal USUAL_TOLERANCE_PERCENT = BigDecimal.valueOf(2);

    public MassLimit(BigDecimal mostPercent, String because) {
        this(mostPercent, USUAL_TOLERANCE_PERCENT, "", because, List.of());
    }

    /** Whether it holds for a vehicle that is registered in that country. */
    public boolean holdsIn(String registered) {
        return country.isEmpty() || country.equals(registered);
    }
}
