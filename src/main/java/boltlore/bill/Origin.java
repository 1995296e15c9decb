package boltlore.bill;

import boltlore.measure.PartNumber;
<<<<<<< HEAD
import boltlore.resolution.Asker;
import java.util.List;
=======
import boltlore.resolution.Requirer;
>>>>>>> s-b

/** What put an item where it stands. */
public sealed interface Origin {

    /** It is its line's own part. */
    record OwnLine() implements Origin {}

    /** The assembly above contains it. */
    record Inside(PartNumber assembly) implements Origin {}

    /** An asker needs it, for that reason. */
    record NeededBy(Requirer asker, String because) implements Origin {}

<<<<<<< HEAD
    /**
     * Several askers share it on one joint; the largest ask counts, once.
     *
     * @param asker with the largest ask
     * @param askers all of them
     */
    record AtJoint(String joint, Asker asker, String because, List<Asker> askers) implements Origin {
        public AtJoint {
            askers = List.copyOf(askers);
        }
    }
=======
    /** Several askers share it on one joint; the largest ask counts, once. */
    record AtJoint(String joint, Requirer asker, String because) implements Origin {}
>>>>>>> s-b
}
