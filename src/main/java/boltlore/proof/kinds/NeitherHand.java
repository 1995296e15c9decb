package boltlore.proof.kinds;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Hand;
import boltlore.catalogue.Pair;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.List;

/** A pair that is due and of which no hand ships. */
final class NeitherHand implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.NEITHER_HAND;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return true;
    }

    @Override
    public String holds() {
        return "Of every required pair, one hand is fitted.";
    }

    @Override
    public String mend() {
        return "Add a line for these orders, or say when the pair is required.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        return Hands.following(kit).map(pair -> neither(kit, pair)).toList();
    }

    private static PossibleFinding neither(KitView kit, Pair.One pair) {
        Hands hands = new Hands(kit, pair.name());
        return PossibleFinding.of(
                pair.name(),
                "",
                All.of(
                        Any.of(Hands.asksLeft(pair), Hands.asksRight(pair)),
                        kit.kit().unfolded(pair.due()),
                        new Condition.Not(hands.present(Hand.LEFT)),
                        new Condition.Not(hands.present(Hand.RIGHT))),
                hands.lines(),
                "A valid order has neither hand of pair " + pair.name() + ", which is required.");
    }
}
