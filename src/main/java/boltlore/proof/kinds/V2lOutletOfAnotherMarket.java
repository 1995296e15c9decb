package boltlore.proof.kinds;

import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.List;

/** A V2L outlet that the market does not use. */
final class V2lOutletOfAnotherMarket implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.V2L_OUTLET_OF_ANOTHER_MARKET;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return false;
    }

    @Override
    public String holds() {
        return "Every V2L outlet is one that its market uses.";
    }

    @Override
    public String mend() {
        return "Add a limit that keeps the socket out of the market, or list it among the market's sockets.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        return RolePairs.clashing(
                kit,
                Role.EXPORT,
                Role.MARKET,
                V2lOutletOfAnotherMarket::clash,
                "A valid order has V2L outlet %1$s in market %2$s, which does not use it.");
    }

    private static boolean clash(OptionValue export, OptionValue market) {
        List<String> used = market.facts().sockets();
        String socket = export.facts().socket();
        return socket != null && !used.isEmpty() && !used.contains(socket);
    }
}
