package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.math.BigDecimal;

/**
 * A cable of the power wiring by the metre.
 *
 * @param areaMm2 of one copper core
 * @param ohmPerKm of one core at 20 °C, in Ω/km: IEC 60228, class 5, is the most that a flexible one may have
 * @param hottestC of the copper at that current, in °C
 * @param volts rated voltage in V
 * @param amps that it carries for hours under what is assumed
 * @param assumed how it lies and how warm it is around it, in words
 * @param kFactor of copper with that insulation in A √s / mm² (IEC 60364-4-43: 115 with PVC, 143 with XLPE)
 */
public record PowerCable(
        PartNumber part,
        BigDecimal areaMm2,
        BigDecimal ohmPerKm,
        int hottestC,
        BigDecimal volts,
        BigDecimal amps,
        String assumed,
        BigDecimal kFactor) {}
