package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Position;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A bag is opened at one fit stage and holds one sub-system: a position in it that says otherwise is in the wrong bag. */
final class BagsAlike {

    /** So many others say what a bag is for. */
    private static final int OTHERS = 3;

    private BagsAlike() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream()
                .flatMap(family -> family.positions().stream()
                        .filter(position -> !position.bag().isEmpty())
                        .collect(Collectors.groupingBy(Position::bag))
                        .values()
                        .stream()
                        .flatMap(together -> Stream.concat(
                                unlike(family, together, "stage", Position::stage),
                                unlike(family, together, "subSystem", Position::subSystem))));
    }

    private static Stream<Remark> unlike(
            Family family, List<Position> together, String key, Function<Position, String> of) {
        return together.stream().flatMap(position -> {
            List<String> others = together.stream()
                    .filter(other -> !other.equals(position))
                    .map(of)
                    .distinct()
                    .toList();
            return together.size() <= OTHERS || others.size() != 1 || others.contains(of.apply(position))
                    ? Stream.empty()
                    : Stream.of(new Remark(
                            "position " + family.name() + "/" + position.name(),
                            Check.BAG_UNLIKE,
                            "'" + key + "' " + of.apply(position) + " in bag " + position.bag(),
                            others.get(0) + ", as all others in that bag",
                            "Correct the bag or the '" + key + "'"));
        });
    }
}
