package boltlore.proof.kinds;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Fill;
import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.logic.All;
import boltlore.measure.LineName;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.ArrayList;
import java.util.List;

/** A position for one line that an order calls for twice. */
final class Overlap implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.OVERLAP;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return false;
    }

    @Override
    public String holds() {
        return "No valid order selects two alternatives for one position.";
    }

    @Override
    public String mend() {
        return "Make the two conditions exclude each other, or let the position take several lines.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        List<PossibleFinding> all = new ArrayList<>();
        for (Position position : kit.family().positions()) {
            if (position.fill() == Fill.ONE) {
                pairs(kit, position, all);
            }
        }
        return all;
    }

    private static void pairs(KitView kit, Position position, List<PossibleFinding> all) {
        List<LineName> lines =
                position.lines().stream().map(Line::name).sorted().toList();
        for (int i = 0; i < lines.size(); i++) {
            for (int j = i + 1; j < lines.size(); j++) {
                LineName first = lines.get(i);
                LineName second = lines.get(j);
                Condition both = All.of(kit.kit().called(first), kit.kit().called(second));
                all.add(PossibleFinding.of(
                        position.name().text(),
                        first + ", " + second,
                        both,
                        List.of(first, second),
                        "A valid order selects both " + first + " and " + second + " at position " + position.name()
                                + ", which takes one line."));
            }
        }
    }
}
