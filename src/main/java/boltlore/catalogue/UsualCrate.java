package boltlore.catalogue;

import java.util.Collection;

/**
 * Crates that a kit usually takes where it has something of a fit stage or of a bag that is a crate of its own: what its
 * price holds. What an order really takes is packed for it.
 *
 * @param stage fit stage, or empty for all of them
 * @param bag bag that is a crate of its own, or empty for what lies in none
 * @param crate kind of crate
 */
public record UsualCrate(String stage, String bag, String crate, int count) {

    /** Whether that position's parts lie in it. */
    public boolean takes(Position position, Collection<String> ownCrates) {
        boolean here = stage.isEmpty() || position.stage().equals(stage);
        return here
                && (bag.isEmpty()
                        ? !ownCrates.contains(position.bag())
                        : position.bag().equals(bag));
    }
}
