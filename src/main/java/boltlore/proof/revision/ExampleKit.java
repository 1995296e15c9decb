package boltlore.proof.revision;

import boltlore.choices.Choices;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.SortedMap;

/**
 * One order before and after an edit.
 *
 * @param order over the options of both revisions
 * @param before quantities of the parts that differ, in the earlier kit
 * @param after the same in the later kit
 */
public record ExampleKit(
        Choices order, SortedMap<PartNumber, BigDecimal> before, SortedMap<PartNumber, BigDecimal> after) {}
