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

/** A pair of which the hand ships that the order does not ask for. */
final class WrongHand implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.WRONG_HAND;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return true;
    }

    @Override
    public String holds() {
        return "No valid order has the wrong hand of a pair.";
    }

    @Override
    public String mend() {
        return "Swap the parts of the two lines, or correct their conditions or the hand in the part master.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        return Hands.following(kit).map(pair -> wrong(kit, pair)).toList();
    }

    private static PossibleFinding wrong(KitView kit, Pair.One pair) {
        Hands hands = new Hands(kit, pair.name());
        Condition left = hands.present(Hand.LEFT);
        Condition right = hands.present(Hand.RIGHT);
        Condition wrong = Any.of(
                All.of(Hands.asksLeft(pair), right, new Condition.Not(left)),
                All.of(Hands.asksRight(pair), left, new Condition.Not(right)));
        return PossibleFinding.of(
                pair.name(),
                "",
                wrong,
                hands.lines(),
                "A valid order has the hand of pair " + pair.name() + " that does not fit " + pair.follows() + ".");
    }
}
