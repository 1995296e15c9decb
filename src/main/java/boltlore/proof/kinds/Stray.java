package boltlore.proof.kinds;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.logic.All;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.ArrayList;
import java.util.List;

/** A position that is filled although it is not required. */
final class Stray implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.STRAY;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return false;
    }

    @Override
    public String holds() {
        return "No position is fitted that is not required.";
    }

    @Override
    public String mend() {
        return "Narrow the lines' conditions, or widen when the position is required.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        List<PossibleFinding> all = new ArrayList<>();
        for (Position position : kit.family().positions()) {
            Condition due = position.due();
            if (due != null) {
                all.add(PossibleFinding.of(
                        position.name().text(),
                        "",
                        All.of(
                                kit.kit().filled(position.name()),
                                new Condition.Not(kit.kit().unfolded(due))),
                        position.lines().stream().map(Line::name).toList(),
                        "A valid order has a part at position " + position.name() + " although it is not required."));
            }
        }
        return all;
    }
}
