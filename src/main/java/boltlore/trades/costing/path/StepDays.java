package boltlore.trades.costing.path;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Coater;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import boltlore.trades.coating.CoatingCost;

/** How many calendar days the steps of a kit take. */
public final class StepDays {

    private final Catalogue catalogue;

    public StepDays(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** Of the last step: assemble, test and pack the kit. */
    public int ofKit() {
        return catalogue.workshop().assemblyDays();
    }

    /**
     * Of coating: at the outside coater, also of a piece that the own oven does not take. The own oven coats in rounds, and a
     * piece that is needed late in a round is coated at its beginning: it must be ready a whole round before. 0 where the
     * part is not coated, or the workshop has no rounds.
     */
    public int turnRound(Part part, String finish) {
        Finish known = part.coat() == null ? null : catalogue.finishes().get(finish);
        return known == null
                ? 0
                : CoatingCost.coater(part, known, catalogue)
                        .map(Coater::turnRoundDays)
                        .orElse(catalogue.workshop().coating().time().roundDays());
    }

    /** From ordering or releasing the part itself until it lies ready, coated. */
    public int of(Part part, String finish) {
        return part.leadDays() + turnRound(part, finish);
    }
}
