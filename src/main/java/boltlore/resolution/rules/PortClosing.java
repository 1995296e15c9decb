package boltlore.resolution.rules;

import boltlore.catalogue.Port;
import boltlore.measure.PartNumber;
import boltlore.resolution.FamilyPlan;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Gives out the mates and blanks of a kit to its ports, so that as few ports as possible stay open: a largest flow from
 * ports to what closes them, along shortest augmenting paths (Edmonds and Karp, Journal of the ACM 19, 1972; from memory).
 * Ports that the same parts close are one group.
 */
final class PortClosing {

    private final Map<Set<PartNumber>, BigDecimal> ports = new LinkedHashMap<>();
    private final Map<PartNumber, BigDecimal> closing = new HashMap<>();
    private final Map<Set<PartNumber>, Map<PartNumber, BigDecimal>> closed = new HashMap<>();
    private final Set<Set<PartNumber>> leftOpen = new HashSet<>();

    PortClosing(FamilyPlan plan, Map<PartNumber, BigDecimal> quantities) {
        quantities.forEach((number, quantity) ->
                plan.part(number).connectors().forEach(port -> ports.merge(closers(port), quantity, BigDecimal::add)));
        ports.keySet().forEach(group -> {
            closed.put(group, new HashMap<>());
            group.forEach(closer -> closing.put(closer, quantities.getOrDefault(closer, BigDecimal.ZERO)));
        });
        Optional<List<Object>> path = path();
        while (path.isPresent()) {
            closeAlong(path.get());
            path = path();
        }
    }

    private static Set<PartNumber> closers(Port port) {
        Set<PartNumber> closers = new TreeSet<>(port.mates());
        Optional.ofNullable(port.blank()).ifPresent(closers::add);
        return closers;
    }

    /** Whether some way of closing as many as can be leaves such a port open. */
    boolean mayStayOpen(Port port) {
        return leftOpen.contains(closers(port));
    }

    /** Groups and closing parts by turns, from an open port to a part that is left over; groups met without one are open. */
    private Optional<List<Object>> path() {
        Map<Object, Object> from = new LinkedHashMap<>();
        Deque<Set<PartNumber>> next = new ArrayDeque<>();
        for (Set<PartNumber> group : ports.keySet()) {
            if (stillOpen(group).signum() > 0) {
                from.put(group, group);
                next.add(group);
            }
        }
        while (!next.isEmpty()) {
            Set<PartNumber> group = next.remove();
            for (PartNumber closer : group) {
                if (from.putIfAbsent(closer, group) == null) {
                    if (leftOver(closer).signum() > 0) {
                        return Optional.of(back(closer, from));
                    }
                    holders(closer)
                            .filter(other -> from.putIfAbsent(other, closer) == null)
                            .forEach(next::add);
                }
            }
        }
        closed.keySet().stream().filter(from::containsKey).forEach(leftOpen::add);
        return Optional.empty();
    }

    private static List<Object> back(Object end, Map<Object, Object> from) {
        List<Object> path = new ArrayList<>(List.of(end));
        Object at = end;
        Object before = from.get(at);
        while (before != null && !before.equals(at)) {
            path.add(0, before);
            at = before;
            before = from.get(at);
        }
        return path;
    }

    private void closeAlong(List<Object> path) {
        BigDecimal many = stillOpen(group(path, 0)).min(leftOver(closer(path, path.size() - 1)));
        for (int i = 1; i + 1 < path.size(); i += 2) {
            many = many.min(held(group(path, i + 1), closer(path, i)));
        }
        for (int i = 0; i + 1 < path.size(); i++) {
            boolean takes = i % 2 == 0;
            Set<PartNumber> group = group(path, takes ? i : i + 1);
            PartNumber closer = closer(path, takes ? i + 1 : i);
            closed.computeIfAbsent(group, same -> new HashMap<>())
                    .merge(closer, takes ? many : many.negate(), BigDecimal::add);
        }
    }

    @SuppressWarnings("unchecked") // groups stand at even places
    private static Set<PartNumber> group(List<Object> path, int place) {
        return (Set<PartNumber>) path.get(place);
    }

    private static PartNumber closer(List<Object> path, int place) {
        return (PartNumber) path.get(place);
    }

    private BigDecimal held(Set<PartNumber> group, PartNumber closer) {
        return closed.getOrDefault(group, Map.of()).getOrDefault(closer, BigDecimal.ZERO);
    }

    private Stream<Set<PartNumber>> holders(PartNumber closer) {
        return ports.keySet().stream().filter(group -> held(group, closer).signum() > 0);
    }

    private BigDecimal stillOpen(Set<PartNumber> group) {
        return closed.getOrDefault(group, Map.of()).values().stream()
                .reduce(ports.getOrDefault(group, BigDecimal.ZERO), BigDecimal::subtract);
    }

    private BigDecimal leftOver(PartNumber closer) {
        return closed.keySet().stream()
                .map(group -> held(group, closer))
                .reduce(closing.getOrDefault(closer, BigDecimal.ZERO), BigDecimal::subtract);
    }
}
