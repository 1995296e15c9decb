package boltlore.catalogue.json;

import boltlore.catalogue.BottomUp;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Companion;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Family;
import boltlore.json.SourceLocation;
import boltlore.measure.PartNumber;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** No part may bring itself, by whatever way round, and none lies deeper in others than anybody builds. */
final class PartLoops {

    /** Levels of assemblies in assemblies; vehicles are built in less than ten. */
    static final int DEEPEST = 100;

    private final Catalogue catalogue;
    private final PartGraph graph;
    private final Reading reading;

    PartLoops(Catalogue catalogue, PartGraph graph, Reading reading) {
        this.graph = graph;
        this.catalogue = catalogue;
        this.reading = reading;
    }

    /** Whether there are any. */
    boolean check() {
        int before = reading.faults().count();
        List<List<PartNumber>> everywhere = graph.loops();
        everywhere.forEach(loop -> fault(loop, reading.sources().of(catalogue.part(loop.get(0)))));
        if (everywhere.isEmpty()) {
            catalogue.families().values().forEach(this::check);
            deep();
        }
        return reading.faults().count() > before;
    }

    /** Told once, for the deepest: what goes down through the levels would else run out of room. */
    private void deep() {
        Map<PartNumber, Integer> deep = new HashMap<>();
        BottomUp<PartNumber, Integer> levels = new BottomUp<>(
                deep,
                this::inside,
                part -> 1 + inside(part).stream().mapToInt(deep::get).max().orElse(0));
        catalogue.parts().keySet().forEach(levels::of);
        deep.entrySet().stream()
                .filter(each -> each.getValue() > DEEPEST)
                .max(Map.Entry.<PartNumber, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .ifPresent(deepest -> reading.faults()
                        .add(reading.sources()
                                .of(catalogue.part(deepest.getKey()))
                                .fault(
                                        "part '" + deepest.getKey() + "' with " + deepest.getValue()
                                                + " levels of parts within parts",
                                        "at most " + DEEPEST + " levels under 'contains'",
                                        "Let an assembly contain the parts of the next levels itself.")));
    }

    private List<PartNumber> inside(PartNumber part) {
        return catalogue.part(part).contains().stream()
                .map(Contained::part)
                .filter(catalogue.parts()::containsKey)
                .toList();
    }

    private void check(Family family) {
        for (List<PartNumber> loop : graph.with(family).loops()) {
            Companion companion = family.companions().stream()
                    .filter(each -> loop.contains(each.part()))
                    .findFirst()
                    .orElseThrow();
            fault(loop, reading.sources().of(companion));
        }
    }

    private void fault(List<PartNumber> loop, SourceLocation location) {
        reading.faults()
                .add(location.fault(
                        "the loop " + Loops.says(loop),
                        "no part that contains or needs itself",
                        "Remove one of these steps from 'contains' or 'needs'."));
    }
}
