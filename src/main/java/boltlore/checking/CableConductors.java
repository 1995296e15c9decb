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
                .filter(child -> known.contains(child.part()) && child.perMetre() != null)
                .toList();
        Stream<Remark> mixed = conductors.size() < 2
                ? Stream.empty()
                : Stream.of(new Remark(
                        Said.part(part),
                        Check.CONDUCTORS,
                        conductors.stream().map(child -> child.part().text()).collect(Collectors.joining(" and "))
                                + " in one cable",
                        "conductors of one kind",
                        "Leave out those that no contact takes"));
        return Stream.concat(
                mixed,
                conductors.stream()
                        .filter(child -> isDirect(part) && !inPairs(child))
                        .map(child -> new Remark(
                                Said.part(part),
                                Check.CONDUCTORS,
                                Digits.plain(child.perMetre() == null ? BigDecimal.ZERO : child.perMetre()) + " × "
                                        + child.part() + " side by side",
                                "a pair, plus and minus",
                                "Write how many lie side by side under 'perMetre'")));
    }

    private static boolean isDirect(Part part) {
        return part.ports().stream()
                .filter(Port::highVoltage)
                .allMatch(port -> port.joint() != null && port.joint().flow() == Flow.HV_DC);
    }

    private static boolean inPairs(Contained child) {
        return child.perMetre() != null && child.perMetre().remainder(PAIR).signum() == 0;
    }
}
