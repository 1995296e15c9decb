package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fits;
import boltlore.catalogue.InletWiring;
import boltlore.catalogue.Line;
import boltlore.catalogue.Pack;
import boltlore.catalogue.Part;
import boltlore.catalogue.Port;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where an inlet has the same contacts for both, the pack's voltage stands on the mains cable and on the open contactors behind
 * it while direct current flows: they are held against that, not against the mains alone. It follows from the circuit.
 */
record SharedContacts(Catalogue catalogue, Family family, Together together) {

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream()
                .map(family -> new SharedContacts(catalogue, family, new Together(family)))
                .flatMap(shared -> shared.family.electrics().inlets().stream()
                        .filter(inlet -> inlet.sharedPins() && inlet.isolatedBy() != null)
                        .flatMap(shared::inlet))
                .distinct();
    }

    private Stream<Remark> inlet(InletWiring inlet) {
        Optional<BigDecimal> volts = family.electrics().packs().stream()
                .filter(pack -> together.canHold(pack.when(), inlet.when()))
                .map(Pack::highestVolts)
                .max(Comparator.naturalOrder());
        return volts.stream()
                .flatMap(most -> family.fits().runs().stream()
                        .map(run -> upTo(run.steps(), inlet))
                        .flatMap(List::stream)
                        .flatMap(step -> step(step, inlet, most)));
    }

    /** The steps of a path from its beginning to the contactors; none where it does not pass through them. */
    private static List<Fits.Step> upTo(List<Fits.Step> steps, InletWiring inlet) {
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).position().equals(inlet.isolatedBy())) {
                return steps.subList(0, i + 1);
            }
        }
        return List.of();
    }

    private Stream<Remark> step(Fits.Step step, InletWiring inlet, BigDecimal most) {
        return family.positions().stream()
                .filter(position -> position.name().equals(step.position()))
                .flatMap(position -> position.lines().stream())
                .filter(line -> together.canHold(line.when(), inlet.when()))
                .map(Line::part)
                .map(catalogue::part)
                .filter(part ->
                        part.ports().stream().allMatch(port -> port.shares().isEmpty()))
                .flatMap(part -> part.ports().stream()
                        .filter(port ->
                                port.name().equals(step.in()) || port.name().equals(step.out()))
                        .filter(port -> tooLittle(port, most))
                        .map(port -> remark(part, port, most)));
    }

    private static boolean tooLittle(Port port, BigDecimal most) {
        return volts(port).filter(volts -> volts.compareTo(most) < 0).isPresent();
    }

    private static Optional<BigDecimal> volts(Port port) {
        return Optional.ofNullable(port.joint()).map(Port.Joint::volts);
    }

    private static Remark remark(Part part, Port port, BigDecimal most) {
        return new Remark(
                Said.part(part),
                Check.SHARED_PINS,
                "port '" + port.name() + "' for "
                        + volts(port).map(Digits::plain).orElse("?") + " V",
                "at least " + Digits.plain(most)
                        + " V, the pack's highest: its inlet has the same contacts for mains and direct current",
                "Take a cable or contactors for the pack's voltage, direct current, or correct the port");
    }
}
