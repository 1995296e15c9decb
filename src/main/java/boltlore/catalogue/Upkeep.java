package boltlore.catalogue;

import boltlore.measure.PartNumber;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What keeps a part's number alive over the years: its papers, what came after it, what may stand in for it, and how its
 * values came about.
 *
 * @param replacedBy null while the part is current; a superseded part stands in no kit, or in none from some order on
 * @param alternates what stores may pick where the part is short, best first
 * @param notes for the engineer alone, on no sheet: where its mass, area, times and prices are from; or empty
 * @param changes its history, oldest first
 * @param coreCredit what one returned old unit gives back, in the workshop's currency; the part's cost holds it. Null where nothing
 *     is taken back
 * @param inspect what is looked at before a part of the base vehicle goes back in, and what ends its use; null of any other part
 */
public record Upkeep(
        List<Document> documents,
        @Nullable Successor replacedBy,
        List<Alternate> alternates,
        String notes,
        List<Change> changes,
        @Nullable BigDecimal coreCredit,
        @Nullable Wording inspect) {

    public static final Upkeep NONE = new Upkeep(List.of(), null, List.of());

    /** Without a history, and of which nothing is taken back. */
    public Upkeep(List<Document> documents, @Nullable Successor replacedBy, List<Alternate> alternates) {
        this(documents, replacedBy, alternates, "", List.of(), null, null);
    }

    /**
     * The part that supersedes another.
     *
     * @param from first issue of the successor that does; null where each does
     * @param serviceOnly whether the old part may still be delivered as a spare
     * @param since the orders that get it, open to the end; for every order where it is {@link Effectivity#ALWAYS}
     */
    public record Successor(PartNumber part, @Nullable String from, boolean serviceOnly, Effectivity since) {}

    /** A part that does as well, and why. */
    public record Alternate(PartNumber part, String because) {}
}
