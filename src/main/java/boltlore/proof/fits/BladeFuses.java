package boltlore.proof.fits;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.FusedCircuit;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.Digits;
import boltlore.proof.KitView;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Blade fuses of the 12 V network against the load and the wire of the circuit that each of them is for. */
final class BladeFuses {

    /** Of its rating a fuse bears that much for hours: common practice, no source. */
    private static final BigDecimal FOR_HOURS = new BigDecimal("0.8");

    private final KitView kit;
    private final List<FitFinding.Possible> all = new ArrayList<>();

    private BladeFuses(KitView kit) {
        this.kit = kit;
    }

    /** None of a family that says nothing of its electrics: charging tells that nothing could be judged. */
    static List<FitFinding.Possible> findings(KitView kit) {
        if (kit.family().electrics().equals(Electrics.NONE)) {
            return List.of();
        }
        BladeFuses fuses = new BladeFuses(kit);
        kit.family().electrics().circuits().forEach(fuses::circuit);
        kit.family().lines().forEach(fuses::line);
        return fuses.all;
    }

    private void circuit(FusedCircuit circuit) {
        Condition there = kit.kit().unfolded(circuit.when());
        List<Condition> rated = new ArrayList<>();
        for (Line line : kit.kit().position(circuit.position()).lines()) {
            for (Part fuse : fuses(line)) {
                rated.add(kit.kit().in(line.name()));
                judge(circuit, line, fuse, All.of(there, kit.kit().in(line.name())));
            }
        }
        all.add(FitFinding.CIRCUIT_WITHOUT_FUSE.when(
                All.of(there, Any.but(Any.of(rated))),
                circuit.name(),
                circuit.position().text(),
                List.of(),
                "circuit",
                circuit.says(),
                "position",
                Broken.said(kit, circuit.position())));
    }

    /** Fuses that a line brings, but for those that electrics.json holds against a branch of the power wiring. */
    private List<Part> fuses(Line line) {
        return Stream.concat(Stream.of(line.part()), line.needs().stream().map(Need::part))
                .map(kit.catalogue()::part)
                .filter(part -> part.traits().ratedAmps() != null)
                .filter(part -> kit.family().electrics().fuses().stream()
                        .noneMatch(fuse -> fuse.part().equals(part.number())))
                .toList();
    }

    private void judge(FusedCircuit circuit, Line line, Part fuse, Condition when) {
        BigDecimal amps = Objects.requireNonNull(fuse.traits().ratedAmps());
        BigDecimal bears = amps.multiply(FOR_HOURS);
        if (amps.compareTo(circuit.wireAmps()) > 0) {
            add(FitFinding.BLADE_FUSE_ABOVE_WIRE, circuit, line, fuse, when, "wire", circuit.wireAmps());
        }
        if (circuit.loadAmps().compareTo(bears) > 0) {
            add(
                    FitFinding.BLADE_FUSE_BELOW_LOAD,
                    circuit,
                    line,
                    fuse,
                    when,
                    "load",
                    circuit.loadAmps(),
                    "bears",
                    new BigDecimal(Digits.upTo(bears, 1)));
        }
    }

    private void add(FitFinding kind, FusedCircuit circuit, Line line, Part fuse, Condition when, Object... figures) {
        List<Object> named = new ArrayList<>(List.of(
                "circuit",
                circuit.says(),
                "part",
                BoxContents.named(kit, fuse.number()),
                "amps",
                Objects.requireNonNull(fuse.traits().ratedAmps())));
        named.addAll(List.of(figures));
        all.add(kind.when(when, circuit.name(), fuse.number().text(), List.of(line.name()), named.toArray()));
    }

    private void line(Line line) {
        List<Condition> told = kit.family().electrics().circuits().stream()
                .filter(circuit ->
                        kit.kit().position(circuit.position()).lines().contains(line))
                .map(circuit -> kit.kit().unfolded(circuit.when()))
                .toList();
        for (Part fuse : fuses(line)) {
            all.add(FitFinding.BLADE_FUSE_WITHOUT_CIRCUIT.when(
                    All.of(kit.kit().in(line.name()), Any.but(Any.of(told))),
                    line.name().text(),
                    fuse.number().text(),
                    List.of(line.name()),
                    "part",
                    BoxContents.named(kit, fuse.number())));
        }
    }
}
