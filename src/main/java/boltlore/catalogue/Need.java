package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.math.BigDecimal;

/** A companion that a part or a line brings into the kit. */
public record Need(PartNumber part, Ask ask, Condition when, String because) {

    public sealed interface Ask {}

    /** That many for each asker. */
    public record Each(BigDecimal quantity) implements Ask {}

    /** At least that many on a joint that several askers share: the largest ask counts, once. */
    public record AtJoint(String joint, BigDecimal atLeast) implements Ask {}
}
