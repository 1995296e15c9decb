package boltlore.proof.kinds;

import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.List;

/** Labels and manuals in a language that the market does not use. */
final class LabelsOfAnotherMarket implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.LABELS_OF_ANOTHER_MARKET;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return false;
    }

    @Override
    public String holds() {
        return "Labels and manuals are always in a language of the market.";
    }

    @Override
    public String mend() {
        return "Add a limit that ties the language to the market, or list the language among the market's.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        return RolePairs.clashing(
                kit,
                Role.LANGUAGE,
                Role.MARKET,
                LabelsOfAnotherMarket::clash,
                "A valid order has labels in %1$s in market %2$s, which asks for another language.");
    }

    private static boolean clash(OptionValue language, OptionValue market) {
        List<String> used = market.facts().languages();
        return !used.isEmpty() && !used.contains(language.value());
    }
}
