package boltlore.proof.revision;

import boltlore.catalogue.Condition;
import boltlore.logic.Count;
import boltlore.measure.PartNumber;
import java.util.List;

/**
 * A part that is another one than before under the same number.
 *
 * @param what is different: revision, drawing, mass, coat, finish and so on
 * @param when kits of both revisions hold it, as a condition over options
 * @param orders how many of the orders valid in both have it in both kits
 */
public record PartEdit(PartNumber part, List<Edit> what, Condition when, Count orders) {

    /**
     * One thing that is different.
     *
     * @param before as it was, empty where it does not fit into a word
     */
    public record Edit(String what, String before, String after) {}
}
