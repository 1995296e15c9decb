package boltlore.proof.fits;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.PositionName;
import boltlore.proof.KitView;
import java.util.ArrayList;
import java.util.List;

/** Circuits that cannot be filled, or out of which the air cannot get. */
final class Fillings {

    private Fillings() {}

    static List<FitFinding.Possible> unfilled(KitView kit) {
        List<FitFinding.Possible> all = new ArrayList<>();
        for (Fits.Run circuit : kit.family().fits().runs()) {
            if (circuit.filling() != null) {
                PositionName fill = circuit.filling().fill();
                Condition joined = All.of(kit.kit().filled(fill), joined(kit, circuit, fill));
                all.add(lacks(kit, circuit, fill, joined, FitFinding.CIRCUIT_CANNOT_BE_FILLED));
            }
        }
        return all;
    }

    static List<FitFinding.Possible> unbled(KitView kit) {
        List<FitFinding.Possible> all = new ArrayList<>();
        for (Fits.Run circuit : kit.family().fits().runs()) {
            if (circuit.filling() != null) {
                PositionName bleed = circuit.filling().bleed();
                PositionName on = kit.kit().position(bleed).under();
                Condition joined =
                        Any.of(joined(kit, circuit, bleed), on == null ? Any.NEVER : joined(kit, circuit, on));
                all.add(lacks(
                        kit,
                        circuit,
                        bleed,
                        All.of(kit.kit().filled(bleed), joined),
                        FitFinding.CIRCUIT_CANNOT_BE_BLED));
            }
        }
        return all;
    }

    private static FitFinding.Possible lacks(
            KitView kit, Fits.Run circuit, PositionName at, Condition joined, FitFinding lacks) {
        Position position = kit.kit().position(at);
        return lacks.when(
                All.of(kit.kit().unfolded(circuit.required()), Any.but(joined)),
                circuit.name(),
                at.text(),
                position.lines().stream().map(Line::name).toList(),
                "circuit",
                circuit.name(),
                "position",
                Broken.said(kit, at));
    }

    /** When the position is on the circuit, or on a run that meets it. */
    private static Condition joined(KitView kit, Fits.Run circuit, PositionName at) {
        List<Condition> ways = new ArrayList<>();
        ways.add(passes(kit, circuit, at));
        for (Fits.Run run : kit.family().fits().runs()) {
            if (!run.equals(circuit) && run.flow() == circuit.flow()) {
                List<Condition> meets = run.steps().stream()
                        .map(Fits.Step::position)
                        .distinct()
                        .filter(position -> !position.equals(at))
                        .map(position -> All.of(passes(kit, run, position), passes(kit, circuit, position)))
                        .toList();
                ways.add(All.of(passes(kit, run, at), Any.of(meets)));
            }
        }
        return Any.of(ways);
    }

    private static Condition passes(KitView kit, Fits.Run run, PositionName at) {
        Condition required = kit.kit().unfolded(run.required());
        return Any.of(run.steps().stream()
                .filter(step -> step.position().equals(at))
                .map(step -> All.of(required, kit.kit().unfolded(step.when())))
                .toList());
    }
}
