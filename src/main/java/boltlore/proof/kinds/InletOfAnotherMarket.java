package boltlore.proof.kinds;

import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.List;

/** An inlet that the market does not use. */
final class InletOfAnotherMarket implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.INLET_OF_ANOTHER_MARKET;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return false;
    }

    @Override
    public String holds() {
        return "Every inlet is one that its market uses.";
    }

    @Override
    public String mend() {
        return "Add a limit that keeps the inlet out of the market, or list it among the market's inlets.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        return RolePairs.clashing(
                kit,
                Role.INLET,
                Role.MARKET,
                InletOfAnotherMarket::clash,
                "A valid order has inlet %1$s in market %2$s, which does not use it.");
    }

    private static boolean clash(OptionValue inlet, OptionValue market) {
        List<String> used = market.facts().inlets();
        return !used.isEmpty() && !used.contains(inlet.value());
    }
}
