package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.math.BigDecimal;

/** A child of an assembly with its fixed quantity for one of the assembly. */
public record Contained(PartNumber part, BigDecimal quantity) {}
