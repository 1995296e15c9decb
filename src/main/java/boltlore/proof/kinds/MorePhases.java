package boltlore.proof.kinds;

import boltlore.catalogue.Facts;

/** Whether a charger has more phases than what it hangs on, where that is known. */
final class MorePhases {

    private MorePhases() {}

    static boolean has(Facts charger, Facts source) {
        Integer wanted = charger.phases();
        Integer there = source.phases();
        return wanted != null && there != null && there > 0 && wanted > there;
    }
}
