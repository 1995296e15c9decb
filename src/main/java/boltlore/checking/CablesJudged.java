package boltlore.checking;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Family;
import boltlore.catalogue.Part;
import boltlore.catalogue.Port;
import boltlore.measure.PositionName;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Whether every high-voltage cable of a family stands in a branch: what no branch names has no fuse that anybody looks at. */
final class CablesJudged {

    private CablesJudged() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream()
                .filter(family -> !family.electrics().equals(Electrics.NONE))
                .flatMap(family -> of(family, catalogue));
    }

    private static Stream<Remark> of(Family family, Catalogue catalogue) {
        Set<PositionName> judged =
                family.electrics().branches().stream().map(Branch::position).collect(Collectors.toSet());
        return family.positions().stream()
                .filter(position -> !judged.contains(position.name()))
                .filter(position -> position.lines().stream()
                        .map(line -> catalogue.parts().get(line.part()))
                        .filter(Objects::nonNull)
                        .anyMatch(CablesJudged::isCable))
                .map(position -> new Remark(
                        "position " + family.name() + "/" + position.name(),
                        Check.NO_BRANCH,
                        "a high-voltage cable that no branch of electrics.json names",
                        "a branch with its load, fuse and cable",
                        "Add one: without it nothing holds load, fuse and cable against each other"));
    }

    private static boolean isCable(Part part) {
        return part.lengthMm() != null
                && part.ports().stream().filter(Port::highVoltage).count() > 1;
    }
}
