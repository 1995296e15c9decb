package boltlore.proof.fits;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Line;
import boltlore.catalogue.Part;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.proof.KitView;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A shaft that is too short or too long for the distance between its flanges, or a flange that stands nowhere. */
final class Shafts {

    private Shafts() {}

    static List<FitFinding.Possible> findings(KitView kit) {
        List<FitFinding.Possible> all = new ArrayList<>();
        for (Fits.Shaft shaft : kit.family().fits().shafts()) {
            for (Line line : kit.kit().position(shaft.position()).lines()) {
                Integer lengthMm = kit.catalogue().part(line.part()).lengthMm();
                all.addAll(lengthMm == null ? List.of(unknown(kit, line)) : off(kit, shaft, line, lengthMm));
                all.add(nowhere(kit, line, shaft.from(), "front"));
                all.add(nowhere(kit, line, shaft.to(), "rear"));
            }
        }
        unnamed(kit).forEach(all::add);
        return all;
    }

    /** A part with a length that somebody signs for, and that is no cable and no hose, stands between two flanges. */
    private static Stream<FitFinding.Possible> unnamed(KitView kit) {
        return kit.family().positions().stream()
                .filter(position -> kit.family().fits().shafts().stream()
                        .noneMatch(shaft -> shaft.position().equals(position.name())))
                .filter(position -> kit.family().joints().stream()
                        .anyMatch(facts -> facts.safety() && position.name().equals(facts.position())))
                .flatMap(position -> position.lines().stream())
                .filter(line -> isShaft(kit.catalogue().part(line.part())))
                .map(line -> FitFinding.SHAFT_NOT_NAMED.when(
                        kit.kit().in(line.name()),
                        line.name().text(),
                        "between no flanges",
                        List.of(line.name()),
                        "part",
                        BoxContents.named(kit, line.part())));
    }

    private static boolean isShaft(Part part) {
        return part.lengthMm() != null && part.ports().isEmpty();
    }

    private static List<FitFinding.Possible> off(KitView kit, Fits.Shaft shaft, Line line, int lengthMm) {
        List<FitFinding.Possible> all = new ArrayList<>();
        for (Fits.Flange from : shaft.from()) {
            for (Fits.Flange to : shaft.to()) {
                int apart = to.stationMm() - from.stationMm();
                Condition when = All.of(
                        kit.kit().in(line.name()),
                        kit.kit().unfolded(from.when()),
                        kit.kit().unfolded(to.when()));
                if (Math.abs(apart - lengthMm) > shaft.slideMm() && !when.equals(Any.NEVER)) {
                    all.add(FitFinding.SHAFT_DOES_NOT_REACH.when(
                            when,
                            line.name().text(),
                            lengthMm + " mm, flanges " + apart + " mm apart",
                            List.of(line.name()),
                            "part",
                            BoxContents.named(kit, line.part()),
                            "length",
                            String.valueOf(lengthMm),
                            "apart",
                            String.valueOf(apart),
                            "slide",
                            String.valueOf(shaft.slideMm())));
                }
            }
        }
        return all;
    }

    private static FitFinding.Possible unknown(KitView kit, Line line) {
        return FitFinding.SHAFT_OF_UNKNOWN_LENGTH.when(
                kit.kit().in(line.name()),
                line.name().text(),
                "length not known",
                List.of(line.name()),
                "part",
                BoxContents.named(kit, line.part()));
    }

    private static FitFinding.Possible nowhere(KitView kit, Line line, List<Fits.Flange> flanges, String end) {
        Condition some = Any.of(flanges.stream()
                .map(flange -> kit.kit().unfolded(flange.when()))
                .toList());
        return FitFinding.FLANGE_STANDS_NOWHERE.when(
                All.of(kit.kit().in(line.name()), Any.but(some)),
                line.name().text(),
                end + " flange not known",
                List.of(line.name()),
                "part",
                BoxContents.named(kit, line.part()),
                "end",
                end.equals("front") ? 0 : 1);
    }
}
