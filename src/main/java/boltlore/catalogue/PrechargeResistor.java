package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.math.BigDecimal;

/**
 * The resistor that the DC link fills through.
 *
 * @param part that it sits in
 * @param pulseJoule energy of a single pulse that it bears, in J
 * @param abortAfterSeconds when the controller gives up, opens the precharge and locks it, where the link has not come
 *     up by then, in s; the main contactor closes by voltage, not by time
 */
public record PrechargeResistor(
        PartNumber part, Condition when, BigDecimal ohm, BigDecimal pulseJoule, BigDecimal abortAfterSeconds) {}
