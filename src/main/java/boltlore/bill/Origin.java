package boltlore.bill;

import boltlore.measure.PartNumber;
import boltlore.resolution.Requirer;

/** What put an item where it stands. */
public sealed interface Origin {

    /** It is its line's own part. */
    record OwnLine() implements Origin {}

    /** The assembly above contains it. */
    record Inside(PartNumber assembly) implements Origin {}

    /** An asker needs it, for that reason. */
    record NeededBy(Requirer asker, String because) implements Origin {}

    /** Several askers share it on one joint; the largest ask counts, once. */
    record AtJoint(String joint, Requirer asker, String because) implements Origin {}
}
