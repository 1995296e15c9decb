package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Demand;
import boltlore.catalogue.Family;
import boltlore.catalogue.LimitRule;
import boltlore.catalogue.Position;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Whatever has a high-voltage connector, or mates with one, is tried for bonding in a family that tests its kits. */
final class BondingTested {

    private BondingTested() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        Set<PartNumber> connected = connected(catalogue);
        return catalogue.families().values().stream()
                .filter(family -> !family.endOfLine().groups().isEmpty())
                .flatMap(family -> remarks(family, connected));
    }

    /** A lead that only closes the interlock bears no high voltage, and so no caution. */
    static Set<PartNumber> connected(Catalogue catalogue) {
        return catalogue.parts().values().stream()
                .filter(part -> !part.connectors().isEmpty())
                .flatMap(part -> Stream.concat(
                        Stream.of(part.number()), part.ports().stream().flatMap(port -> port.mates().stream())))
                .filter(number -> catalogue.part(number).cautions().contains("high-voltage"))
                .collect(Collectors.toSet());
    }

    private static Stream<Remark> remarks(Family family, Set<PartNumber> connected) {
        Set<PositionName> tried = tried(family);
        return family.positions().stream()
                .filter(position -> !tried.contains(position.name()))
                .filter(position -> position.lines().stream().anyMatch(line -> connected.contains(line.part())))
                .map(position -> remark(family, position));
    }

    private static Set<PositionName> tried(Family family) {
        return family.endOfLine().groups().stream()
                .flatMap(group -> group.tests().stream())
                .filter(test ->
                        test.demand() instanceof Demand.Computed reckoned && reckoned.rule() == LimitRule.BONDING)
                .flatMap(test -> test.at().stream())
                .collect(Collectors.toSet());
    }

    private static Remark remark(Family family, Position position) {
        return new Remark(
                "position " + family.name() + "/" + position.name(),
                Check.BONDING,
                "no test of bonding there",
                "one, for parts with high-voltage connectors stand there",
                "Name the position under 'at' of the test that is reckoned by 'bonding' in tests.json");
    }
}
