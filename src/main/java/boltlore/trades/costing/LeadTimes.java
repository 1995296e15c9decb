package boltlore.trades.costing;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.Coater;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;

/**
 * Times parts backwards from the day the kit ships. A part takes its own lead days and, where it is coated outside, the
 * coater's turn-round; an assembly starts when its last child is ready; the kit ships the workshop's assembly days after
 * its last part. The longest chain is the lead time of the kit.
 */
public final class LeadTimes {

    private final Catalogue catalogue;

    public LeadTimes(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** Of a part that goes straight into the kit. */
    public Timing ofKitPart(Part part, String finish) {
        return of(part, finish, catalogue.workshop().assemblyDays());
    }

    /** Of a part that goes into an assembly timed like that. */
    public Timing ofChild(Part part, String finish, Timing assembly) {
        return of(part, finish, assembly.startDays());
    }

    private Timing of(Part part, String finish, int readyDays) {
        return new Timing(readyDays, readyDays + part.leadDays() + turnRoundDays(part, finish));
    }

    /** Calendar days at the outside coater; 0 where the part is not coated or the own oven does it. */
    public int turnRoundDays(Part part, String finish) {
        Finish known = part.coat() == null ? null : catalogue.finishes().get(finish);
        Coater coater =
                known == null ? null : catalogue.workshop().coating().coaters().get(coater(known.where()));
        return coater == null ? 0 : coater.turnRoundDays();
    }

    /** Name of the outside coater, empty for the own oven. */
    private static String coater(CoatedWhere where) {
        if (where instanceof CoatedWhere.OutsideByArea outside) {
            return outside.coater();
        }
        return where instanceof CoatedWhere.OutsideByPiece outside ? outside.coater() : "";
    }
}
