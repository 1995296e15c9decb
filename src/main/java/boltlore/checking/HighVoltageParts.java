package boltlore.checking;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Demand;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fuse;
import boltlore.catalogue.KitTest;
import boltlore.catalogue.LimitRule;
import boltlore.catalogue.Pack;
import boltlore.catalogue.Part;
import boltlore.catalogue.Port;
import boltlore.catalogue.PowerCable;
import boltlore.catalogue.PrechargeResistor;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.trades.charging.HighVoltage;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The parts that bear high voltage as far as the data says so, each with what says it. */
final class HighVoltageParts {

    /** These are measured at cases and frames too, which may come without anything live in them. */
    private static final Set<LimitRule> AT_CASES =
            Set.of(LimitRule.BONDING, LimitRule.BONDING_AMPS, LimitRule.ISOLATION);

    private final Map<PartNumber, String> because = new HashMap<>();

    private HighVoltageParts() {}

    static Map<PartNumber, String> in(Catalogue catalogue) {
        HighVoltageParts found = new HighVoltageParts();
        catalogue.parts().values().stream()
                .filter(part -> !part.connectors().isEmpty())
                .map(Part::number)
                .forEach(part -> found.because.putIfAbsent(part, "it has high-voltage connectors"));
        catalogue.families().values().forEach(found::add);
        catalogue.parts().values().stream()
                .filter(part -> part.ports().stream().anyMatch(Port::highVoltage))
                .map(Part::number)
                .forEach(part -> found.because.putIfAbsent(part, "it has high-voltage ports"));
        return found.because;
    }

    private void add(Family family) {
        Electrics electrics = family.electrics();
        Set<PartNumber> low = onlyLow(electrics);
        Stream.of(
                        electrics.packs().stream().map(Pack::module),
                        electrics.resistors().stream().map(PrechargeResistor::part),
                        electrics.fuses().stream().map(Fuse::part),
                        electrics.cables().stream().map(PowerCable::part))
                .flatMap(parts -> parts)
                .filter(part -> !low.contains(part))
                .forEach(part -> because.putIfAbsent(part, "electrics.json of " + family.name() + " names it"));
        at(family, positions(electrics), "where electrics.json has a cable");
        tests(family)
                .forEach(test -> at(
                        family,
                        Set.copyOf(test.at()),
                        "where test '" + test.name() + "' asks for "
                                + ((Demand.Computed) test.demand()).rule().written()));
    }

    private static Set<PositionName> positions(Electrics electrics) {
        return high(electrics, true).map(Branch::position).collect(Collectors.toSet());
    }

    private static Stream<Branch> high(Electrics electrics, boolean high) {
        return electrics.branches().stream().filter(branch -> high == isHigh(electrics, branch));
    }

    /** A pack of up to 60 V is no high voltage, and so are its cables none. */
    private static boolean isHigh(Electrics electrics, Branch branch) {
        if (branch.fedBy() instanceof Branch.FedBy.Pack) {
            return electrics.packs().isEmpty()
                    || electrics.packs().stream().anyMatch(pack -> HighVoltage.direct(pack.highestVolts()));
        }
        return !(branch.fedBy() instanceof Branch.FedBy.LowVoltage);
    }

    /** Modules, cables and fuses that are rated for no high voltage, or that only branches without it have. */
    private static Set<PartNumber> onlyLow(Electrics electrics) {
        Set<PartNumber> low = Stream.of(
                        high(electrics, false).flatMap(branch -> parts(electrics, branch)),
                        electrics.packs().stream()
                                .filter(pack -> !HighVoltage.direct(pack.highestVolts()))
                                .map(Pack::module),
                        electrics.cables().stream()
                                .filter(cable -> !HighVoltage.direct(cable.volts()))
                                .map(PowerCable::part),
                        electrics.fuses().stream()
                                .filter(fuse -> !HighVoltage.direct(fuse.volts()))
                                .map(Fuse::part))
                .flatMap(parts -> parts)
                .collect(Collectors.toSet());
        high(electrics, true).flatMap(branch -> parts(electrics, branch)).forEach(low::remove);
        electrics.packs().stream()
                .filter(pack -> HighVoltage.direct(pack.highestVolts()))
                .map(Pack::module)
                .forEach(low::remove);
        return low;
    }

    private static Stream<PartNumber> parts(Electrics electrics, Branch branch) {
        Branch.Protection protection = branch.protection();
        String fuse = protection.fuse() == null ? null : protection.fuse().name();
        String farFuse =
                protection.farEnd() == null ? null : protection.farEnd().fuse();
        return Stream.concat(
                Stream.of(branch.cable()),
                electrics.fuses().stream()
                        .filter(each -> each.name().equals(fuse) || each.name().equals(farFuse))
                        .map(Fuse::part));
    }

    private static Stream<KitTest> tests(Family family) {
        return family.endOfLine().groups().stream()
                .flatMap(group -> group.tests().stream())
                .filter(test ->
                        test.demand() instanceof Demand.Computed computed && !AT_CASES.contains(computed.rule()));
    }

    private void at(Family family, Set<PositionName> positions, String says) {
        family.positions().stream()
                .filter(position -> positions.contains(position.name()))
                .forEach(position -> position.lines()
                        .forEach(line -> because.putIfAbsent(
                                line.part(), "it stands at " + family.name() + "/" + position.name() + ", " + says)));
    }
}
