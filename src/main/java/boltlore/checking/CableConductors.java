package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Flow;
import boltlore.catalogue.Part;
import boltlore.catalogue.Port;
import boltlore.catalogue.PowerCable;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whether a high-voltage cable is made of one kind of conductor, and one of direct current of a pair: plus and minus. What
 * lies beside them unused is bought and weighed, and is live where somebody joins it.
 */
final class CableConductors {

    private static final BigDecimal PAIR = BigDecimal.valueOf(2);
    private static final int KILO = 3;

    private CableConductors() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        Set<PartNumber> known = catalogue.families().values().stream()
                .flatMap(family -> family.electrics().cables().stream())
                .map(PowerCable::part)
                .collect(Collectors.toSet());
        return catalogue.parts().values().stream()
                .filter(CableConductors::isCable)
                .flatMap(part -> of(part, known));
    }

    private static boolean isCable(Part part) {
        return part.lengthMm() != null
                && part.ports().stream().filter(Port::highVoltage).count() > 1;
    }

    private static Stream<Remark> of(Part part, Set<PartNumber> known) {
        List<Contained> conductors = part.contains().stream()
                .filter(child -> known.contains(child.part()))
                .toList();
        if (known.isEmpty() || conductors.size() != 1) {
            return known.isEmpty() ? Stream.empty() : Stream.of(mixed(part, conductors));
        }
        Contained conductor = conductors.get(0);
        BigDecimal many = sideBySide(part, conductor);
        return isDirect(part) && !inPairs(many)
                ? Stream.of(new Remark(
                        Said.part(part),
                        Check.CONDUCTORS,
                        Digits.upTo(many, 2) + " × " + conductor.part() + " side by side",
                        "a pair, plus and minus",
                        "Write how many lie side by side under 'perMetre'"))
                : Stream.empty();
    }

    private static Remark mixed(Part part, List<Contained> conductors) {
        String found = conductors.stream().map(child -> child.part().text()).collect(Collectors.joining(" and "));
        return new Remark(
                Said.part(part),
                Check.CONDUCTORS,
                conductors.isEmpty() ? "no conductor that electrics.json knows" : found + " in one cable",
                "conductors of one kind",
                conductors.isEmpty()
                        ? "Let it contain its conductor, and name that under 'cables'"
                        : "Leave out those that no contact takes");
    }

    /** Told by the metre, or as metres of the whole cable, which may be a little more than its length. */
    private static BigDecimal sideBySide(Part part, Contained conductor) {
        BigDecimal perMetre = conductor.perMetre();
        BigDecimal metres = BigDecimal.valueOf(part.lengthMm() == null ? 1 : part.lengthMm())
                .movePointLeft(KILO);
        return perMetre == null
                ? conductor.quantity().divide(metres, MathContext.DECIMAL32).setScale(0, RoundingMode.HALF_UP)
                : perMetre;
    }

    private static boolean isDirect(Part part) {
        return part.ports().stream()
                .filter(Port::highVoltage)
                .allMatch(port -> port.joint() != null && port.joint().flow() == Flow.HV_DC);
    }

    private static boolean inPairs(BigDecimal many) {
        return many.signum() > 0 && many.remainder(PAIR).signum() == 0;
    }
}
