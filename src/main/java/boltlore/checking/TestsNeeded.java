package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Family;
import boltlore.catalogue.HouseRules.NeededTest;
import boltlore.catalogue.KitTest;
import boltlore.catalogue.Part;
import boltlore.catalogue.PartKind;
import boltlore.catalogue.Position;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** A family that tests its kits leaves out no test that the house asks of what is in them. */
record TestsNeeded(Catalogue catalogue, Family family) {

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream()
                .filter(family -> !family.endOfLine().groups().isEmpty())
                .flatMap(family -> catalogue.house().tests().stream()
                        .flatMap(needed -> new TestsNeeded(catalogue, family).without(needed)));
    }

    private Stream<Remark> without(NeededTest needed) {
        PartKind kind = Objects.requireNonNull(catalogue.house().kinds().get(needed.with()));
        List<KitTest> made = family.endOfLine().groups().stream()
                .flatMap(group -> group.tests().stream())
                .filter(needed::isBy)
                .toList();
        List<Position> concerned = family.positions().stream()
                .filter(position ->
                        position.lines().stream().anyMatch(line -> holds(catalogue.part(line.part()), kind)))
                .toList();
        if (!needed.there()) {
            return made.isEmpty() && !concerned.isEmpty()
                    ? Stream.of(remark("family " + family.name(), needed, kind))
                    : Stream.empty();
        }
        return concerned.stream()
                .filter(position -> made.stream().noneMatch(test -> test.at().contains(position.name())))
                .map(position -> remark("position " + family.name() + "/" + position.name(), needed, kind));
    }

    private boolean holds(Part part, PartKind kind) {
        return kind.covers(part)
                || part.contains().stream().map(Contained::part).anyMatch(child -> holds(catalogue.part(child), kind));
    }

    private static Remark remark(String about, NeededTest needed, PartKind kind) {
        return new Remark(
                about,
                Check.TEST_NEEDED,
                "no such test: " + needed.says(),
                "one in every order, for there is a " + kind.says().in("en") + " (" + needed.source() + ")",
                "Add it to tests.json with the state, rule or bound that 'tests' in house.json gives it");
    }
}
