package boltlore.proof;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.logic.Bringings;
import boltlore.logic.KitConditions;
import boltlore.logic.PartConditions;

/** What kits of a family hold and when, as conditions over its options; with or without the brackets of no use. */
public record KitView(KitConditions kit, PartConditions parts, Bringings bringings) {

    /**
     * The kits of a family.
     *
     * @param unusedLeftOut whether orders leave out every bracket that carries nothing, or none
     */
    public static KitView of(Catalogue catalogue, Family family, boolean unusedLeftOut) {
        KitConditions kit = new KitConditions(catalogue, family, unusedLeftOut);
        PartConditions parts = new PartConditions(kit);
        return new KitView(kit, parts, new Bringings(kit, parts));
    }

    public Catalogue catalogue() {
        return kit.catalogue();
    }

    public Family family() {
        return kit.family();
    }
}
