package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Companion;
import boltlore.catalogue.Family;
import boltlore.json.SourceLocation;
import boltlore.measure.PartNumber;
import java.util.List;

/** No part may bring itself, by whatever way round. */
final class PartLoops {

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
        }
        return reading.faults().count() > before;
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
