package boltlore.proof;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.logic.Deadline;

/**
 * A family as the kinds of statements see it.
 *
 * @param kept its kits with every bracket in
 * @param leftOut its kits without the brackets that support nothing
 */
public record FamilyView(KitView kept, KitView leftOut) {

    /**
     * The family's kits in both ways.
     *
     * @param deadline of what is worked out of conditions
     */
    public static FamilyView of(Catalogue catalogue, Family family, Deadline deadline) {
        return new FamilyView(
                KitView.of(catalogue, family, false, deadline), KitView.of(catalogue, family, true, deadline));
    }

    public Catalogue catalogue() {
        return kept.catalogue();
    }

    public Family family() {
        return kept.family();
    }
}
