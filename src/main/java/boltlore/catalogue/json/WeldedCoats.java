package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Joined;
import boltlore.catalogue.Part;
import boltlore.measure.PartNumber;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;

/** A welded assembly is coated whole, so nothing that is welded into it has a coat of its own. */
final class WeldedCoats {

    private final Catalogue catalogue;
    private final Reading reading;

    WeldedCoats(Catalogue catalogue, Reading reading) {
        this.catalogue = catalogue;
        this.reading = reading;
    }

    void check() {
        catalogue.parts().values().stream()
                .filter(part -> part.structure().joined() == Joined.WELDED)
                .forEach(welded -> welded.contains().forEach(child -> below(welded, child)));
    }

    private void below(Part welded, Contained child) {
        Set<PartNumber> seen = new HashSet<>();
        Deque<Contained> open = new ArrayDeque<>();
        open.add(child);
        while (!open.isEmpty()) {
            Part part = catalogue.parts().get(open.remove().part());
            if (part != null && seen.add(part.number())) {
                coated(welded, child, part);
                open.addAll(part.contains());
            }
        }
    }

    private void coated(Part welded, Contained child, Part part) {
        if (part.coat() != null) {
            fault(welded, child, part);
        }
    }

    private void fault(Part welded, Contained child, Part coated) {
        reading.faults()
                .add(reading.sources()
                        .of(child)
                        .fault(
                                coated.number() + ", which has a coat, inside the welded " + welded.number(),
                                "no coat below a welded assembly, which is coated whole",
                                "Move the coat to the assembly."));
    }
}
