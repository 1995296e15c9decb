package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Companion;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.measure.PartNumber;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which part brings which: by containing it or by needing it. */
final class PartGraph {

    private final Map<PartNumber, List<PartNumber>> brings;

    private PartGraph(Map<PartNumber, List<PartNumber>> brings) {
        this.brings = brings;
    }

    /** What holds in every family. */
    static PartGraph of(Catalogue catalogue) {
        PartGraph graph = new PartGraph(new HashMap<>());
        for (Part part : catalogue.parts().values()) {
            part.contains().stream().map(Contained::part).forEach(child -> graph.add(part.number(), child));
            part.needs().stream().map(Need::part).forEach(needed -> graph.add(part.number(), needed));
        }
        return graph;
    }

    /** With what holds in that family beside. */
    PartGraph with(Family family) {
        PartGraph graph = new PartGraph(new HashMap<>());
        brings.forEach((part, brought) -> graph.brings.put(part, new ArrayList<>(brought)));
        for (Companion companion : family.companions()) {
            companion.needs().stream().map(Need::part).forEach(needed -> graph.add(companion.part(), needed));
        }
        return graph;
    }

    private void add(PartNumber from, PartNumber to) {
        brings.computeIfAbsent(from, any -> new ArrayList<>()).add(to);
    }

    List<List<PartNumber>> loops() {
        return Loops.in(brings.keySet().stream().sorted().toList(), part -> brings.getOrDefault(part, List.of()));
    }

    /** Those parts and all that they bring, and so on. */
    Set<PartNumber> reach(Collection<PartNumber> parts) {
        Set<PartNumber> reached = new LinkedHashSet<>(parts);
        Deque<PartNumber> open = new ArrayDeque<>(reached);
        while (!open.isEmpty()) {
            for (PartNumber brought : brings.getOrDefault(open.remove(), List.of())) {
                if (reached.add(brought)) {
                    open.add(brought);
                }
            }
        }
        return reached;
    }

    /** Every part that some order of the family may hold. */
    Set<PartNumber> reach(Family family) {
        List<PartNumber> parts = new ArrayList<>();
        for (Line line : family.lines().toList()) {
            parts.add(line.part());
            line.needs().forEach(need -> parts.add(need.part()));
        }
        return reach(parts);
    }
}
