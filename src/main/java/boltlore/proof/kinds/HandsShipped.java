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

/** A pair of which one hand should ship, and both do or none does. */
record HandsShipped(FindingKind finding, boolean both, String holds, String mend) implements FindingStatements {

    static final HandsShipped BOTH = new HandsShipped(
            FindingKind.BOTH_HANDS,
            true,
            "No valid order has both hands of a pair that ships one.",
            "Let each hand's line follow the option, or let the pair ship both.");

    static final HandsShipped NEITHER = new HandsShipped(
            FindingKind.NEITHER_HAND,
            false,
            "Of every required pair, one hand is fitted.",
            "Add a line for these orders, or say when the pair is required.");

    @Override
    public boolean dependsOnLeftOut() {
        return true;
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        return Hands.following(kit).map(pair -> of(kit, pair)).toList();
    }

    private PossibleFinding of(KitView kit, Pair.One pair) {
        Hands hands = new Hands(kit, pair.name());
        Condition left = hands.present(Hand.LEFT);
        Condition right = hands.present(Hand.RIGHT);
        Condition asked = Any.of(Hands.asksLeft(pair), Hands.asksRight(pair));
        return PossibleFinding.of(
                pair.name(),
                "",
                both
                        ? All.of(asked, left, right)
                        : All.of(
                                asked,
                                kit.kit().unfolded(pair.due()),
                                new Condition.Not(left),
                                new Condition.Not(right)),
                hands.lines(),
                "A valid order has "
                        + (both
                                ? "both hands of pair " + pair.name() + ", of which one ships."
                                : "neither hand of pair " + pair.name() + ", which is required."));
    }
}
