package boltlore.proof.kinds;

import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.List;

/** An inlet for direct current alone that the market does not use. */
final class DcInletOfAnotherMarket implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.DC_INLET_OF_ANOTHER_MARKET;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return false;
    }

    @Override
    public String holds() {
        return "Every DC inlet is one that its market uses.";
    }

    @Override
    public String mend() {
        return "Add a limit that keeps the DC inlet out of the market, or list it among the market's inlets.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        return RolePairs.clashing(
                kit,
                Role.DC_INLET,
                Role.MARKET,
                DcInletOfAnotherMarket::clash,
                "A valid order has DC inlet %1$s in market %2$s, which does not use it.");
    }

    private static boolean clash(OptionValue inlet, OptionValue market) {
        List<String> used = market.facts().inlets();
        return inlet.facts().amps() != null && !used.isEmpty() && !used.contains(inlet.value());
    }
}
