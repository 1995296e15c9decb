package boltlore.proof.revision;

import boltlore.catalogue.Condition;
import boltlore.logic.Count;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.List;

/**
 * A part of which some kits hold more or less than before.
 *
 * @param when its quantity changes, as a condition over options
 * @param differences by how much, later less earlier, each that occurs; in ascending order
 * @param orders how many of the orders valid in both have another quantity
 */
public record PartChange(PartNumber part, Condition when, List<BigDecimal> differences, Count orders) {}
