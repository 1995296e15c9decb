package boltlore.catalogue;

import java.math.BigDecimal;

/**
 * One coat of powder.
 *
 * @param specificGravity of the cured film, water = 1
 * @param filmMinUm least film in µm
 * @param filmTargetUm film to aim for in µm
 * @param filmMaxUm most film in µm
 * @param cureMetalC metal (not air) temperature in °C
 * @param cureMinutes minutes at metal temperature
 * @param utilisationPercent share of the sprayed powder that stays on the part
 */
public record PowderCoat(
        String powder,
        BigDecimal specificGravity,
        int filmMinUm,
        int filmTargetUm,
        int filmMaxUm,
        int cureMetalC,
        int cureMinutes,
        BigDecimal utilisationPercent) {}
