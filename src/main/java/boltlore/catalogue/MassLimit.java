package boltlore.catalogue;

import java.math.BigDecimal;

/**
 * How heavy a market lets a conversion become.
 *
 * @param mostPercent of the donor's mass before conversion: 120 lets it grow by a fifth
 * @param because the rule behind it in a sentence, with its source
 */
public record MassLimit(BigDecimal mostPercent, String because) {}
