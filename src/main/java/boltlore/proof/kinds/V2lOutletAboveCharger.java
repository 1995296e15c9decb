package boltlore.proof.kinds;

import boltlore.catalogue.Facts;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.math.BigDecimal;
import java.util.List;

/** A V2L outlet that gives more power than the charger may feed out. */
final class V2lOutletAboveCharger implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.V2L_OUTLET_ABOVE_CHARGER;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return false;
    }

    @Override
    public String holds() {
        return "No V2L outlet gives more than the charger may feed out.";
    }

    @Override
    public String mend() {
        return "Add a limit that keeps the two apart, or correct the socket's amps or the charger's export rating.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        return RolePairs.clashing(
                kit,
                Role.EXPORT,
                Role.CHARGER,
                V2lOutletAboveCharger::clash,
                "A valid order has V2L outlet %1$s, which gives more than charger %2$s may feed out.");
    }

    private static boolean clash(OptionValue export, OptionValue charger) {
        Facts outlet = export.facts();
        BigDecimal feeds = charger.facts().exportKw();
        return feeds != null
                && outlet.volts() != null
                && outlet.amps() != null
                && outlet.volts().multiply(outlet.amps()).movePointLeft(3).compareTo(feeds) > 0;
    }
}
