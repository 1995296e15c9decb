package boltlore.trades.coating;

import java.math.BigDecimal;

/**
 * Powder that was weighed out for one run, less what came back.
 *
 * @param run its number in the plan that the record was written for
 * @param code of that run, or empty where the record does not say it
 */
public record PowderIssued(int run, String code, BigDecimal kg) {}
