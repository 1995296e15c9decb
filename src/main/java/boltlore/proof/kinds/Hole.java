package boltlore.proof.kinds;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Fill;
import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.logic.All;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.List;

/** A position that is due and stays empty. */
final class Hole implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.HOLE;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return false;
    }

    @Override
    public String holds() {
        return "Every required position has a part.";
    }

    @Override
    public String mend() {
        return "Add a line for these orders, widen the condition of one, or say that the position is not required.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        return kit.family().positions().stream()
                .filter(position -> position.fill() != Fill.FREE)
                .map(position -> PossibleFinding.of(
                        position.name().text(),
                        "",
                        empty(kit, position),
                        position.lines().stream().map(Line::name).toList(),
                        "A valid order leaves position " + position.name() + " empty although it is required."))
                .toList();
    }

    private static Condition empty(KitView kit, Position position) {
        return All.of(
                kit.kit().unfolded(position.dueOrAlways()),
                new Condition.Not(kit.kit().filled(position.name())));
    }
}
