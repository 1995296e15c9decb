package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.measure.LineName;
import boltlore.measure.PositionName;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What stands on several brackets at once goes with all its bolts through their clear holes, or with none: in each set of
 * brackets that may hold it together, no other number of holes is left over by the brackets' own bolts.
 */
final class SharedHoles {

    /** Sets of brackets that are tried of one position. */
    private static final int MOST = 500;

    private final Family family;
    private final HolesForFixings holes;
    private final Together together;

    private SharedHoles(Catalogue catalogue, Family family) {
        this.family = family;
        this.holes = new HolesForFixings(catalogue, family);
        this.together = new Together(family);
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream().flatMap(family -> {
            SharedHoles check = new SharedHoles(catalogue, family);
            return family.positions().stream()
                    .filter(position -> position.heldBy().size() > 1)
                    .flatMap(check::of);
        });
    }

    private Stream<Remark> of(Position position) {
        return holes.threads(position).stream()
                .flatMap(thread -> sets(position).stream()
                        .flatMap(brackets -> of(position, thread, brackets).stream())
                        .limit(1));
    }

    private List<Remark> of(Position position, String thread, List<Line> brackets) {
        List<Optional<Integer>> each =
                brackets.stream().map(bracket -> holes.spare(bracket, thread)).toList();
        int spare = each.stream()
                .flatMap(Optional::stream)
                .mapToInt(Integer::intValue)
                .sum();
        Set<PositionName> carried =
                brackets.stream().flatMap(bracket -> bracket.carries().stream()).collect(Collectors.toSet());
        return each.stream().anyMatch(Optional::isEmpty)
                        || spare <= 0
                        || allOrNone(carried, thread).contains(spare)
                ? List.of()
                : List.of(new Remark(
                        "position " + family.name() + "/" + position.name(),
                        Check.HOLE_UNUSED,
                        spare + " clear holes for " + thread + " in "
                                + brackets.stream()
                                        .map(bracket -> bracket.part().text())
                                        .collect(Collectors.joining(", "))
                                + " beside those of their own bolts",
                        "none, or one for each bolt of what they carry",
                        "Check the count of the fixings and of the holes"));
    }

    /** One bracket of each group that holds the position, as far as an order may have them together. */
    private List<List<Line>> sets(Position position) {
        List<List<Line>> sets = List.of(List.of());
        for (List<LineName> group : position.heldBy()) {
            List<List<Line>> longer = new ArrayList<>();
            for (List<Line> set : sets) {
                group.stream()
                        .flatMap(name -> family.line(name).stream())
                        .filter(line -> set.stream().allMatch(other -> together.canHold(line.when(), other.when())))
                        .forEach(line -> longer.add(
                                Stream.concat(set.stream(), Stream.of(line)).toList()));
            }
            sets = longer.size() > MOST ? longer.subList(0, MOST) : longer;
        }
        return sets;
    }

    /** All bolts of each of those positions or none of them, added up in every way. */
    private Set<Integer> allOrNone(Set<PositionName> carried, String thread) {
        Set<Integer> sums = Set.of(0);
        for (PositionName name : carried) {
            Set<Integer> more = family.position(name).stream()
                    .flatMap(position -> holes.throughBolts(position, thread).stream())
                    .collect(Collectors.toSet());
            more.add(0);
            sums = sums.stream()
                    .flatMap(sum -> more.stream().map(bolts -> sum + bolts))
                    .collect(Collectors.toSet());
        }
        return sums;
    }
}
