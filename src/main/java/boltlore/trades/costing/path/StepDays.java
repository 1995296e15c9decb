package boltlore.trades.costing.path;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.Coater;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;

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

    /** At the outside coater; 0 where the part is not coated or the own oven does it. */
    public int turnRound(Part part, String finish) {
        Finish known = part.coat() == null ? null : catalogue.finishes().get(finish);
        Coater coater =
                known == null ? null : catalogue.workshop().coating().coaters().get(coater(known.where()));
        return coater == null ? 0 : coater.turnRoundDays();
    }

    /** From ordering or releasing the part itself until it lies ready, coated. */
    public int of(Part part, String finish) {
        return part.leadDays() + turnRound(part, finish);
    }

    /** Name of the outside coater, empty for the own oven. */
    private static String coater(CoatedWhere where) {
        if (where instanceof CoatedWhere.OutsideByArea outside) {
            return outside.coater();
        }
        return where instanceof CoatedWhere.OutsideByPiece outside ? outside.coater() : "";
    }
}
