package boltlore.proof.kinds;

import boltlore.catalogue.Hand;
import boltlore.catalogue.Pair;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.List;

/** A pair of which one hand should ship and both do. */
final class BothHands implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.BOTH_HANDS;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return true;
    }

    @Override
    public String holds() {
        return "No valid order has both hands of a pair that ships one.";
    }

    @Override
    public String mend() {
        return "Let each hand's line follow the option, or let the pair ship both.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        return Hands.following(kit).map(pair -> both(kit, pair)).toList();
    }

    private static PossibleFinding both(KitView kit, Pair.One pair) {
        Hands hands = new Hands(kit, pair.name());
        return PossibleFinding.of(
                pair.name(),
                "",
                All.of(
                        Any.of(Hands.asksLeft(pair), Hands.asksRight(pair)),
                        hands.present(Hand.LEFT),
                        hands.present(Hand.RIGHT)),
                hands.lines(),
                "A valid order has both hands of pair " + pair.name() + ", of which one ships.");
    }
}
