package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.faults.Outcome;
import boltlore.measure.PartNumber;
import java.util.Set;

/**
 * A catalogue as far as it can be read.
 *
 * @param whole the checked catalogue, or everything that is wrong with it
 * @param rest the catalogue without what the faults leave open: every part in it knows the parts that it names, and so
 *     does every family
 * @param faulty parts of the rest that something is wrong with, so that their figures may be stand-ins
 * @param workshopKnown whether nothing is wrong with the files of the workshop, its finishes and materials
 * @param familiesKnown whether the rest has all families, so that what none of them names is named nowhere
 */
public record PartlyRead(
        Outcome<Catalogue> whole,
        Catalogue rest,
        Set<PartNumber> faulty,
        boolean workshopKnown,
        boolean familiesKnown) {

    static PartlyRead sound(Catalogue catalogue) {
        return new PartlyRead(Outcome.sound(catalogue), catalogue, Set.of(), true, true);
    }
}
