package boltlore.proof.kinds;

import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.List;

/** A V2L outlet with a charger that is not bidirectional. */
final class V2lOutletNeedsBidirectionalCharger implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.V2L_OUTLET_NEEDS_BIDIRECTIONAL_CHARGER;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return false;
    }

    @Override
    public String holds() {
        return "Every V2L outlet comes with a bidirectional charger.";
    }

    @Override
    public String mend() {
        return "Add a limit that a V2L outlet comes with a bidirectional charger.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        return RolePairs.clashing(
                kit,
                Role.EXPORT,
                Role.CHARGER,
                V2lOutletNeedsBidirectionalCharger::clash,
                "A valid order has V2L outlet %1$s with charger %2$s, which is not bidirectional.");
    }

    private static boolean clash(OptionValue export, OptionValue charger) {
        return export.facts().socket() != null
                && !Boolean.TRUE.equals(charger.facts().twoWay());
    }
}
