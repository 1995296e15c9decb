package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What keeps a part's number alive over the years: its papers, what came after it, what may stand in for it, and how its
 * values came about.
 *
 * @param replacedBy null while the part is current; a superseded part stands in no kit
 * @param alternates what stores may pick where the part is short, best first
 * @param notes for the engineer alone, on no sheet: where its mass, area, times and prices are from; or empty
 */
public record Upkeep(
        List<Document> documents, @Nullable Successor replacedBy, List<Alternate> alternates, String notes) {

    public static final Upkeep NONE = new Upkeep(List.of(), null, List.of(), "");

    /**
     * The part that supersedes another.
     *
     * @param from first issue of the successor that does; null where each does
     * @param serviceOnly whether the old part may still be delivered as a spare
     */
    public record Successor(PartNumber part, @Nullable String from, boolean serviceOnly) {}

    /** A part that does as well, and why. */
    public record Alternate(PartNumber part, String because) {}
}
