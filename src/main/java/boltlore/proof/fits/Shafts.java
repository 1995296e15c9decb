package boltlore.proof.fits;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Line;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import java.util.ArrayList;
import java.util.List;

/** A shaft that is too short or too long for the distance between its flanges, or a flange that stands nowhere. */
final class Shafts {

    private Shafts() {}

    static List<PossibleFinding> findings(KitView kit) {
        List<PossibleFinding> all = new ArrayList<>();
        for (Fits.Shaft shaft : kit.family().fits().shafts()) {
            for (Line line : kit.kit().position(shaft.position()).lines()) {
                Integer lengthMm = kit.catalogue().part(line.part()).lengthMm();
                all.addAll(lengthMm == null ? List.of(unknown(kit, line)) : off(kit, shaft, line, lengthMm));
                all.add(nowhere(kit, line, shaft.from(), "front"));
                all.add(nowhere(kit, line, shaft.to(), "rear"));
            }
        }
        return all;
    }

    private static List<PossibleFinding> off(KitView kit, Fits.Shaft shaft, Line line, int lengthMm) {
        List<PossibleFinding> all = new ArrayList<>();
        for (Fits.Flange from : shaft.from()) {
            for (Fits.Flange to : shaft.to()) {
                int apart = to.stationMm() - from.stationMm();
                Condition when = All.of(
                        kit.kit().in(line.name()),
                        kit.kit().unfolded(from.when()),
                        kit.kit().unfolded(to.when()));
                if (Math.abs(apart - lengthMm) > shaft.slideMm() && !when.equals(Any.NEVER)) {
                    all.add(PossibleFinding.of(
                            line.name().text(),
                            lengthMm + " mm, flanges " + apart + " mm apart",
                            when,
                            List.of(line.name()),
                            "A valid order has shaft " + line.part() + " of " + lengthMm
                                    + " mm between flanges that are " + apart + " mm apart; it slides by "
                                    + shaft.slideMm() + " mm."));
                }
            }
        }
        return all;
    }

    private static PossibleFinding unknown(KitView kit, Line line) {
        return PossibleFinding.of(
                line.name().text(),
                "length not known",
                kit.kit().in(line.name()),
                List.of(line.name()),
                "A valid order has shaft " + line.part() + ", of which the length is not known.");
    }

    private static PossibleFinding nowhere(KitView kit, Line line, List<Fits.Flange> flanges, String end) {
        Condition some = Any.of(flanges.stream()
                .map(flange -> kit.kit().unfolded(flange.when()))
                .toList());
        return PossibleFinding.of(
                line.name().text(),
                end + " flange not known",
                All.of(kit.kit().in(line.name()), some.isAlways() ? Any.NEVER : new Condition.Not(some)),
                List.of(line.name()),
                "A valid order has shaft " + line.part() + ", and fits.json does not say where its " + end
                        + " flange stands.");
    }
}
