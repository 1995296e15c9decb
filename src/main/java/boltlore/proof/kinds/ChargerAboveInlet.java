package boltlore.proof.kinds;

import boltlore.catalogue.Facts;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.List;

/** A charger that draws more current than its inlet carries. */
final class ChargerAboveInlet implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.CHARGER_ABOVE_INLET;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return false;
    }

    @Override
    public String holds() {
        return "No charger draws more current than its inlet carries.";
    }

    @Override
    public String mend() {
        return "Add a limit that keeps this charger from this inlet, or correct the amps of one of them.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        return RolePairs.clashing(
                kit,
                Role.CHARGER,
                Role.INLET,
                ChargerAboveInlet::clash,
                "A valid order has charger %1$s, which draws more current than inlet %2$s carries.");
    }

    private static boolean clash(OptionValue charger, OptionValue inlet) {
        Facts draws = charger.facts();
        Facts carries = inlet.facts();
        return draws.amps() != null && carries.amps() != null && draws.amps().compareTo(carries.amps()) > 0;
    }
}
