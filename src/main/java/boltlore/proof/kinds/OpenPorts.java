package boltlore.proof.kinds;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Port;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.logic.Term;
import boltlore.logic.ThresholdConditions;
import boltlore.measure.PartNumber;
import boltlore.proof.KitView;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * When ports are left open. Ports that the same parts close form a group; some of a group's ports are left open, however
 * the closing parts are given out, exactly where a set of groups with it has more ports beyond its closing parts than
 * each of the set's parts without that group has (after Hall, On representatives of subsets, 1935, and Ore's deficiency).
 */
final class OpenPorts {

    /** Linked groups of which every set is compared with every other; 3 to that power is how many sums it takes. */
    private static final int MOST_COMPARED = 5;

    private final KitView kit;
    private final Map<Set<PartNumber>, List<Term>> portsBy = new LinkedHashMap<>();
    private final Map<Set<PartNumber>, Optional<Condition>> open = new HashMap<>();
    private final Map<List<Set<Set<PartNumber>>>, Optional<Condition>> more = new HashMap<>();

    OpenPorts(KitView kit) {
        this.kit = kit;
        for (PartNumber part : kit.bringings().parts()) {
            for (Port port : kit.catalogue().part(part).connectors()) {
                portsBy.computeIfAbsent(closers(port), same -> new ArrayList<>())
                        .addAll(kit.parts().terms(part));
            }
        }
    }

    /** Those that some order has. */
    private Set<PartNumber> closers(Port port) {
        return Stream.concat(port.mates().stream(), Stream.ofNullable(port.blank()))
                .filter(part -> !kit.parts().terms(part).isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** When the part is in the kit and its port may stay open; empty where that outgrew its bound. */
    Optional<Condition> of(PartNumber part, Port port) {
        Set<PartNumber> group = closers(port);
        Optional<Condition> known = open.get(group);
        if (known == null) {
            known = open(group, linked(group));
            open.put(group, known);
        }
        return known.map(some -> All.of(kit.parts().present(part), some));
    }

    /** All groups that closing parts link with this one, itself first. */
    private List<Set<PartNumber>> linked(Set<PartNumber> group) {
        Set<Set<PartNumber>> linked = new LinkedHashSet<>(List.of(group));
        Set<PartNumber> closers = new HashSet<>(group);
        boolean further = true;
        while (further) {
            further = false;
            for (Set<PartNumber> other : portsBy.keySet()) {
                if (!Collections.disjoint(closers, other) && linked.add(other)) {
                    closers.addAll(other);
                    further = true;
                }
            }
        }
        return List.copyOf(linked);
    }

    private Optional<Condition> open(Set<PartNumber> group, List<Set<PartNumber>> linked) {
        Set<PartNumber> shared = shared(linked);
        boolean one = shared.size() <= 1 && linked.stream().allMatch(each -> each.containsAll(shared));
        if (one) {
            return beyondOneShared(group, linked, shared);
        }
        return linked.size() > MOST_COMPARED ? Optional.empty() : inSomeSet(group, linked);
    }

    private static Set<PartNumber> shared(List<Set<PartNumber>> groups) {
        Set<PartNumber> met = new HashSet<>();
        return groups.stream()
                .flatMap(Set::stream)
                .filter(closer -> !met.add(closer))
                .collect(Collectors.toSet());
    }

    /** Groups with nothing in common but one closing part: that is for what the others of each group leave open. */
    private Optional<Condition> beyondOneShared(
            Set<PartNumber> group, List<Set<PartNumber>> linked, Set<PartNumber> shared) {
        List<Term> left = new ArrayList<>();
        for (Set<PartNumber> each : linked) {
            Optional<List<Term>> own = kit.sums().positivePart(beyond(Set.of(each), shared));
            if (own.isEmpty()) {
                return Optional.empty();
            }
            left.addAll(own.get());
        }
        List<Term> closing = shared.stream()
                .flatMap(closer -> kit.parts().terms(closer).stream())
                .toList();
        Optional<Condition> some = isPositive(beyond(Set.of(group), shared));
        return some.flatMap(
                own -> isPositive(ThresholdConditions.difference(left, closing)).map(all -> All.of(own, all)));
    }

    /** How many more ports than closing parts the groups have, leaving those out. */
    private List<Term> beyond(Set<Set<PartNumber>> groups, Set<PartNumber> without) {
        Set<PartNumber> closers = new TreeSet<>();
        List<Term> ports = new ArrayList<>();
        groups.forEach(group -> {
            closers.addAll(group);
            ports.addAll(portsBy.getOrDefault(group, List.of()));
        });
        closers.removeAll(without);
        List<Term> closing = closers.stream()
                .flatMap(closer -> kit.parts().terms(closer).stream())
                .toList();
        return ThresholdConditions.difference(ports, closing);
    }

    private Optional<Condition> isPositive(List<Term> terms) {
        return kit.sums().reaches(List.of(), terms).map(none -> none.isAlways() ? Any.NEVER : new Condition.Not(none));
    }

    private Optional<Condition> inSomeSet(Set<PartNumber> group, List<Set<PartNumber>> linked) {
        List<Condition> some = new ArrayList<>();
        for (Set<Set<PartNumber>> set : subsets(linked)) {
            if (set.contains(group)) {
                List<Condition> all = new ArrayList<>();
                for (Set<Set<PartNumber>> smaller : subsets(List.copyOf(set))) {
                    Optional<Condition> more =
                            smaller.contains(group) ? Optional.of(Condition.ALWAYS) : more(set, smaller);
                    if (more.isEmpty()) {
                        return Optional.empty();
                    }
                    all.add(more.get());
                }
                some.add(All.of(all));
            }
        }
        return Optional.of(Any.of(some));
    }

    private Optional<Condition> more(Set<Set<PartNumber>> set, Set<Set<PartNumber>> smaller) {
        return more.computeIfAbsent(
                List.of(set, smaller),
                both -> isPositive(ThresholdConditions.difference(beyond(set, Set.of()), beyond(smaller, Set.of()))));
    }

    private static List<Set<Set<PartNumber>>> subsets(List<Set<PartNumber>> groups) {
        List<Set<Set<PartNumber>>> all = new ArrayList<>();
        for (int bits = 0; bits < 1 << groups.size(); bits++) {
            Set<Set<PartNumber>> subset = new HashSet<>();
            for (int i = 0; i < groups.size(); i++) {
                if ((bits >> i & 1) == 1) {
                    subset.add(groups.get(i));
                }
            }
            all.add(subset);
        }
        return all;
    }
}
