package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Position;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Positions that come with an option come with the same of its values as the others of their sub-system: one that lacks a single
 * value which all of those have has perhaps lost it, and with it the part of those orders. Where line and position were narrowed
 * alike, nothing else tells it.
 */
final class DueAlike {

    /** So many others of a sub-system say with which values it comes. */
    private static final int OTHERS = 3;

    private record Due(Position position, OptionName option, Set<String> values) {}

    private DueAlike() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream().flatMap(DueAlike::of);
    }

    private static Stream<Remark> of(Family family) {
        List<Due> all = new ArrayList<>();
        family.positions().forEach(position -> {
            if (position.due() instanceof Condition.Is is) {
                all.add(new Due(position, is.option(), new TreeSet<>(is.values())));
            }
        });
        return all.stream()
                .filter(due -> all.stream().filter(other -> alike(due, other)).count() == 1)
                .flatMap(due -> all.stream()
                        .filter(other -> lacksOne(due, other)
                                && all.stream()
                                                .filter(each -> alike(other, each))
                                                .count()
                                        >= OTHERS)
                        .limit(1)
                        .map(other -> remark(family, due, other)));
    }

    private static boolean alike(Due one, Due other) {
        return one.option().equals(other.option())
                && one.values().equals(other.values())
                && one.position().subSystem().equals(other.position().subSystem());
    }

    private static boolean lacksOne(Due due, Due other) {
        return due.option().equals(other.option())
                && due.position().subSystem().equals(other.position().subSystem())
                && other.values().size() == due.values().size() + 1
                && other.values().containsAll(due.values());
    }

    private static Remark remark(Family family, Due due, Due other) {
        return new Remark(
                "position " + family.name() + "/" + due.position().name(),
                Check.DUE_UNLIKE,
                "'required' with " + due.option() + " " + String.join(", ", due.values()),
                String.join(", ", other.values()) + ", as the others of "
                        + due.position().subSystem() + " that come with " + due.option(),
                "Look whether orders with that value lose a part that they need");
    }
}
