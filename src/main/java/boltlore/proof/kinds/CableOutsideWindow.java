package boltlore.proof.kinds;

import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.catalogue.Route;
import boltlore.logic.All;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.ArrayList;
import java.util.List;

/** A cable that is too short or too long for the route it takes. */
final class CableOutsideWindow implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.CABLE_OUTSIDE_WINDOW;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return true;
    }

    @Override
    public String holds() {
        return "Every cable lies in the window of its route.";
    }

    @Override
    public String mend() {
        return "Give these orders a cable of another length, or measure the route again.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        List<PossibleFinding> all = new ArrayList<>();
        for (Position position : kit.family().positions()) {
            for (Line line : position.lines()) {
                Integer lengthMm = kit.catalogue().part(line.part()).lengthMm();
                if (lengthMm != null) {
                    int length = lengthMm;
                    position.routes().stream()
                            .filter(route -> !route.fits(length))
                            .forEach(route -> all.add(outside(kit, line, length, route)));
                }
            }
        }
        return SameFinding.merged(all);
    }

    private static PossibleFinding outside(KitView kit, Line line, int lengthMm, Route route) {
        String window = route.needsMm() + " to " + (route.needsMm() + route.slackMm()) + " mm";
        return PossibleFinding.of(
                line.name().text(),
                lengthMm + " mm, window " + window,
                All.of(kit.kit().in(line.name()), kit.kit().unfolded(route.when())),
                List.of(line.name()),
                "A valid order lays a cable of " + lengthMm + " mm, line " + line.name() + ", where the route needs "
                        + window + ".");
    }
}
