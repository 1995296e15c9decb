package boltlore.proof.kinds;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.logic.All;
import boltlore.measure.PositionName;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.ArrayList;
import java.util.List;

/** A position that is filled while the one it hangs on is empty. */
final class Orphan implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.ORPHAN;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return false;
    }

    @Override
    public String holds() {
        return "No position is filled while the one it hangs on is empty.";
    }

    @Override
    public String mend() {
        return "Fill the upper position in these orders too, or let the lines below ask for it with 'filled'.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        List<PossibleFinding> all = new ArrayList<>();
        for (Position position : kit.family().positions()) {
            PositionName under = position.under();
            if (under != null) {
                all.add(PossibleFinding.of(
                        position.name().text(),
                        under.text(),
                        All.of(
                                kit.kit().filled(position.name()),
                                new Condition.Not(kit.kit().filled(under))),
                        position.lines().stream().map(Line::name).toList(),
                        "A valid order has a part at position " + position.name() + " but not " + under
                                + ", on which it hangs."));
            }
        }
        return all;
    }
}
