package boltlore.bill;

import boltlore.measure.PartNumber;
import boltlore.resolution.Requirer;
import java.util.List;

/** What put an item where it stands. */
public sealed interface Origin {

    /** It is its line's own part. */
    record OwnLine() implements Origin {}

    /** The assembly above contains it. */
    record Inside(PartNumber assembly) implements Origin {}

    /** An asker needs it, for that reason. */
    record NeededBy(Requirer asker, String because) implements Origin {}

    /**
     * Several requirers share it on one joint; the largest ask counts, once.
     *
     * @param asker with the largest ask
     * @param askers all of them
     */
    record AtJoint(String joint, Requirer asker, String because, List<Requirer> askers) implements Origin {
        public AtJoint {
            askers = List.copyOf(askers);
        }
    }
}
