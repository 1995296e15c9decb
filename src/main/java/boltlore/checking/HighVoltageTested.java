package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Circuit;
import boltlore.catalogue.Demand;
import boltlore.catalogue.EndOfLine;
import boltlore.catalogue.Family;
import boltlore.catalogue.FoundState;
import boltlore.catalogue.KitTest;
import boltlore.catalogue.Label;
import boltlore.catalogue.LimitRule;
import boltlore.catalogue.Port;
import boltlore.catalogue.Position;
import boltlore.catalogue.TestGroup;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whatever has a high-voltage connector, or mates with one, opens the interlock in a test and bears the sign for voltage in a
 * family that tests its kits; and what lies behind contactors has its insulation tested apart, for open contacts part it from
 * the rest.
 */
final class HighVoltageTested {

    /** Warning of electricity (ISO 7010), which UN Regulation 100 asks for on covers of live parts (5.1.1.5). */
    private static final String SIGN = "W012";

    private static final Set<LimitRule> INSULATION = Set.of(LimitRule.DEAD_ISOLATION, LimitRule.ISOLATION);

    private static final Set<FoundState> SWITCHED = Set.of(FoundState.OPEN, FoundState.CLOSED);

    private final Catalogue catalogue;
    private final Family family;
    private final EndOfLine tests;

    private HighVoltageTested(Catalogue catalogue, Family family) {
        this.catalogue = catalogue;
        this.family = family;
        this.tests = family.endOfLine();
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        Set<PartNumber> connected = BondingTested.connected(catalogue);
        return catalogue.families().values().stream()
                .filter(family -> !family.endOfLine().groups().isEmpty())
                .flatMap(family -> new HighVoltageTested(catalogue, family).all(connected));
    }

    private Stream<Remark> all(Set<PartNumber> connected) {
        return Stream.of(
                        missing(
                                connected::contains,
                                at(
                                        group -> group.circuit() == Circuit.DEAD,
                                        test -> state(test, Set.of(FoundState.OPEN))),
                                Check.INTERLOCK,
                                "no test of the interlock there",
                                "one that finds the loop 'open' in a 'dead' group, for parts with high-voltage connectors"
                                        + " stand there"),
                        missing(
                                this::parts,
                                at(group -> true, HighVoltageTested::insulation),
                                Check.INSULATION,
                                "contactors, and no insulation test there",
                                "one reckoned by 'dead-isolation' or 'isolation': open contacts part what lies behind"
                                        + " them from the rest"),
                        missing(
                                connected::contains,
                                labelled(),
                                Check.SIGN,
                                "no label with the sign for voltage there",
                                "one with " + SIGN + " under 'mark' (ISO 7010), for parts with high-voltage connectors"
                                        + " stand there"),
                        uncautioned(connected))
                .flatMap(remarks -> remarks);
    }

    /** Every limit that is worked out is of the high voltage or the mains, and so is what opens where it is connected. */
    private Stream<Remark> uncautioned(Set<PartNumber> connected) {
        Set<PositionName> live = family.positions().stream()
                .filter(position -> position.lines().stream().anyMatch(line -> connected.contains(line.part())))
                .map(Position::name)
                .collect(Collectors.toSet());
        return tests.groups().stream()
                .filter(group -> !group.cautions().contains("high-voltage"))
                .filter(group -> group.tests().stream()
                        .anyMatch(test -> test.demand() instanceof Demand.Computed
                                || (state(test, SWITCHED) && test.at().stream().anyMatch(live::contains))))
                .map(group -> new Remark(
                        "group " + family.name() + "/" + group.name(),
                        Check.HIGH_VOLTAGE,
                        "no caution 'high-voltage'",
                        "that caution, for it tries what bears high voltage or mains",
                        "Add it to the group's cautions in tests.json, so that it stands on the sheets"));
    }

    /** Contactors: something behind two or more high-voltage ports whose contacts are tried live. */
    private boolean parts(PartNumber number) {
        Set<PositionName> switched = at(group -> group.circuit() != Circuit.DEAD, test -> state(test, SWITCHED));
        return catalogue.part(number).ports().stream().filter(Port::highVoltage).count() > 1
                && family.positions().stream()
                        .filter(position -> switched.contains(position.name()))
                        .anyMatch(position -> position.lines().stream()
                                .anyMatch(line -> line.part().equals(number)));
    }

    private static boolean state(KitTest test, Set<FoundState> states) {
        return test.demand() instanceof Demand.InState in && states.contains(in.state());
    }

    private static boolean insulation(KitTest test) {
        return test.demand() instanceof Demand.Computed reckoned && INSULATION.contains(reckoned.rule());
    }

    private Set<PositionName> at(Predicate<TestGroup> group, Predicate<KitTest> test) {
        return tests.groups().stream()
                .filter(group)
                .flatMap(each -> each.tests().stream())
                .filter(test)
                .flatMap(each -> each.at().stream())
                .collect(Collectors.toSet());
    }

    private Set<PositionName> labelled() {
        return tests.labels().stream()
                .filter(label -> label.mark().english().contains(SIGN))
                .map(Label::at)
                .flatMap(positions -> positions.stream())
                .collect(Collectors.toSet());
    }

    private Stream<Remark> missing(
            Predicate<PartNumber> concerned, Set<PositionName> tried, Check check, String found, String expected) {
        return family.positions().stream()
                .filter(position -> !tried.contains(position.name()))
                .filter(position -> position.lines().stream().anyMatch(line -> concerned.test(line.part())))
                .map(position -> new Remark(
                        "position " + family.name() + "/" + position.name(),
                        check,
                        found,
                        expected,
                        "Name the position under 'at' in tests.json"));
    }
}
