package boltlore.catalogue.json;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Finds the loops of a graph that should have none. */
final class Loops {

    private Loops() {}

    /**
     * Loops as they are met by going through the graph depth first, each beginning at its smallest node; none if and
     * only if the graph has none. Without recursion, because a chain in a large file may be longer than the stack.
     */
    static <N extends Comparable<N>> List<List<N>> in(Collection<N> nodes, Function<N, ? extends Collection<N>> next) {
        LinkedHashSet<List<N>> loops = new LinkedHashSet<>();
        Map<N, Boolean> onPath = new HashMap<>();
        for (N start : nodes) {
            if (!onPath.containsKey(start)) {
                follow(start, next, onPath, loops);
            }
        }
        return List.copyOf(loops);
    }

    private static <N extends Comparable<N>> void follow(
            N start, Function<N, ? extends Collection<N>> next, Map<N, Boolean> onPath, Collection<List<N>> loops) {
        List<N> path = new ArrayList<>();
        Deque<Iterator<N>> open = new ArrayDeque<>();
        step(start, next, onPath, path, open);
        while (!open.isEmpty()) {
            if (!open.getLast().hasNext()) {
                open.removeLast();
                onPath.put(path.remove(path.size() - 1), false);
                continue;
            }
            N node = open.getLast().next();
            Boolean seen = onPath.get(node);
            if (seen == null) {
                step(node, next, onPath, path, open);
            } else if (seen) {
                loops.add(fromSmallest(path.subList(path.indexOf(node), path.size())));
            }
        }
    }

    private static <N> void step(
            N node,
            Function<N, ? extends Collection<N>> next,
            Map<N, Boolean> onPath,
            List<N> path,
            Deque<Iterator<N>> open) {
        onPath.put(node, true);
        path.add(node);
        open.addLast(List.<N>copyOf(next.apply(node)).iterator());
    }

    private static <N extends Comparable<N>> List<N> fromSmallest(List<N> loop) {
        List<N> turned = new ArrayList<>(loop);
        Collections.rotate(turned, -turned.indexOf(Collections.min(turned, Comparator.naturalOrder())));
        return List.copyOf(turned);
    }

    /** The loop in words, back to where it began. */
    static <N> String says(List<N> loop) {
        return loop.stream().map(Object::toString).collect(Collectors.joining(" → ")) + " → " + loop.get(0);
    }
}
