package boltlore.proof;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;

/**
 * A family as the kinds of statements see it.
 *
 * @param kept its kits with every bracket in
 * @param leftOut its kits without the brackets that carry nothing
 */
public record FamilyView(KitView kept, KitView leftOut) {

    public static FamilyView of(Catalogue catalogue, Family family) {
        return new FamilyView(KitView.of(catalogue, family, false), KitView.of(catalogue, family, true));
    }

    public Catalogue catalogue() {
        return kept.catalogue();
    }

    public Family family() {
        return kept.family();
    }
}
