package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.math.BigDecimal;

/**
 * The resistor that the DC link fills through.
 *
 * @param part that it sits in
 * @param pulseJoule energy of a single pulse that it bears, in J
 * @param afterSeconds when the contactor is told to close, in s
 */
public record PrechargeResistor(
        PartNumber part, Condition when, BigDecimal ohm, BigDecimal pulseJoule, BigDecimal afterSeconds) {}
