package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.math.BigDecimal;

/**
 * A loose cable for public charging points.
 *
 * @param phases 1 or 3
 * @param amps in each phase in A, as its plug codes it
 */
public record PublicLead(PartNumber part, int phases, BigDecimal amps) {}
