package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.EndOfLine;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Flow;
import boltlore.catalogue.Port;
import boltlore.measure.PositionName;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A test that is made in two circuits of coolant is made in each, and so is a label: frost asks for no name. What of a circuit is
 * on the high voltage too may be named for that, and says nothing.
 */
record CircuitsTested(Catalogue catalogue, Family family) {

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream().flatMap(family -> new CircuitsTested(catalogue, family).all());
    }

    private Stream<Remark> all() {
        EndOfLine tests = family.endOfLine();
        return Stream.concat(
                tests.groups().stream()
                        .flatMap(group -> group.tests().stream())
                        .flatMap(test -> left("test", test.name(), test.at())),
                tests.labels().stream().flatMap(label -> left("label", label.name(), label.at())));
    }

    private Stream<Remark> left(String what, String name, List<PositionName> at) {
        List<Fits.Run> circuits = family.fits().runs().stream()
                .filter(run -> run.filling() != null && run.flow() == Flow.COOLANT)
                .toList();
        List<Fits.Run> without = circuits.stream()
                .filter(circuit -> at.stream().noneMatch(on(circuit)::contains))
                .toList();
        return circuits.size() - without.size() < 2
                ? Stream.empty()
                : without.stream()
                        .map(circuit -> new Remark(
                                what + " " + family.name() + "/" + name,
                                Check.CIRCUIT_UNTESTED,
                                "none in circuit '" + circuit.name() + "'",
                                "one in each circuit of coolant, as in the others",
                                "Name a position of the circuit under 'at' in tests.json, its filling point for one"));
    }

    private Set<PositionName> on(Fits.Run circuit) {
        Fits.Filling filling = circuit.filling();
        return Stream.concat(
                        circuit.steps().stream().map(Fits.Step::position),
                        filling == null ? Stream.of() : Stream.of(filling.fill(), filling.bleed()))
                .filter(position -> !highVoltage(position))
                .collect(Collectors.toSet());
    }

    private boolean highVoltage(PositionName name) {
        return family.position(name).stream()
                .flatMap(position -> position.lines().stream())
                .anyMatch(line -> catalogue.part(line.part()).ports().stream().anyMatch(Port::highVoltage));
    }
}
