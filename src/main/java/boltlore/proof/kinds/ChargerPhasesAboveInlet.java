package boltlore.proof.kinds;

import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.List;

/** A charger with more phases than its inlet. */
final class ChargerPhasesAboveInlet implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.CHARGER_PHASES_ABOVE_INLET;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return false;
    }

    @Override
    public String holds() {
        return "No charger has more phases than the inlet it charges through.";
    }

    @Override
    public String mend() {
        return "Add a limit that keeps the two apart, or accept that the charger runs on fewer phases.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        return RolePairs.clashing(
                kit,
                Role.CHARGER,
                Role.INLET,
                ChargerPhasesAboveInlet::clash,
                "A valid order has charger %1$s with more phases than inlet %2$s, so it charges on fewer.");
    }

    private static boolean clash(OptionValue charger, OptionValue inlet) {
        return MorePhases.has(charger.facts(), inlet.facts());
    }
}
