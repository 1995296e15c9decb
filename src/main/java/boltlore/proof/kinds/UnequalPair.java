package boltlore.proof.kinds;

import boltlore.catalogue.Hand;
import boltlore.catalogue.Pair;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.List;

/** A pair that ships both hands, and more of one than of the other. */
final class UnequalPair implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.UNEQUAL_PAIR;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return true;
    }

    @Override
    public String holds() {
        return "Of every pair that ships both hands there are as many left as right.";
    }

    @Override
    public String mend() {
        return "Give both hands the same condition and quantity.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        return kit.family().pairs().stream()
                .filter(Pair.Both.class::isInstance)
                .map(pair -> unequal(kit, pair))
                .toList();
    }

    private static PossibleFinding unequal(KitView kit, Pair pair) {
        Hands hands = new Hands(kit, pair.name());
        return new PossibleFinding(
                pair.name(),
                "",
                kit.sums().differ(hands.terms(Hand.LEFT), hands.terms(Hand.RIGHT)),
                hands.lines(),
                "A valid order has more of one hand of pair " + pair.name() + " than of the other.");
    }
}
