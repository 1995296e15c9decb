package boltlore.trades.coating;

import java.math.BigDecimal;

/** Powder that was weighed out for one run, less what came back. */
public record PowderIssued(int run, BigDecimal kg) {}
