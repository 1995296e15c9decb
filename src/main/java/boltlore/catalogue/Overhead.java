package boltlore.catalogue;

import java.math.BigDecimal;

/** Overhead in per cent of labour and set-up, and in per cent of material with its scrap. */
public record Overhead(BigDecimal onLabourPercent, BigDecimal onMaterialPercent) {}
