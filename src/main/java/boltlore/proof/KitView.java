package boltlore.proof;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.choices.Choices;
import boltlore.logic.Bringings;
import boltlore.logic.Deadline;
import boltlore.logic.KitConditions;
import boltlore.logic.PartConditions;
import boltlore.logic.ThresholdConditions;
import boltlore.measure.LineName;
import java.util.function.Predicate;

/** What kits of a family hold and when, as conditions over its options; with or without the brackets of no use. */
public record KitView(KitConditions kit, PartConditions parts, Bringings bringings, ThresholdConditions sums) {

    /**
     * The kits of a family.
     *
     * @param unusedLeftOut whether orders leave out every bracket that carries nothing, or none
     * @param deadline of sums over conditions
     */
    public static KitView of(Catalogue catalogue, Family family, boolean unusedLeftOut, Deadline deadline) {
        KitConditions kit = new KitConditions(catalogue, family, unusedLeftOut);
        PartConditions parts = new PartConditions(kit);
        return new KitView(kit, parts, new Bringings(kit, parts), new ThresholdConditions(deadline));
    }

    /**
     * The kit of one order: every condition of it comes to
     * always or never, at once.
     */
    public static KitView of(Catalogue catalogue, Choices settled, Predicate<LineName> leftOut) {
        KitConditions kit = new KitConditions(catalogue, settled.family(), leftOut, settled);
        PartConditions parts = new PartConditions(kit);
        return new KitView(kit, parts, new Bringings(kit, parts), new ThresholdConditions(Deadline.NONE));
    }

    public Catalogue catalogue() {
        return kit.catalogue();
    }

    public Family family() {
        return kit.family();
    }
}
