package boltlore.proof.kinds;

import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.List;

/** An export socket with a charger that does not feed out. */
final class ExportWithoutTwoWay implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.EXPORT_NEEDS_TWO_WAY_CHARGER;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return false;
    }

    @Override
    public String holds() {
        return "Every export socket comes with a two-way charger.";
    }

    @Override
    public String mend() {
        return "Add a limit that an export socket comes with a two-way charger.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        return RolePairs.clashing(
                kit,
                Role.EXPORT,
                Role.CHARGER,
                ExportWithoutTwoWay::clash,
                "A valid order has export socket %1$s with charger %2$s, which does not feed out.");
    }

    private static boolean clash(OptionValue export, OptionValue charger) {
        return export.facts().socket() != null
                && !Boolean.TRUE.equals(charger.facts().twoWay());
    }
}
