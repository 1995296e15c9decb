package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Companion;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.catalogue.Port;
import boltlore.catalogue.Upkeep;
import boltlore.measure.PartNumber;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/** A part that nothing could ever bring into a kit is a slip: a number mistyped, or a line forgotten. */
final class UnusedParts {

    private final Set<PartNumber> used = new HashSet<>();

    private UnusedParts() {}

    /** Says nothing while there is no family yet, because then nothing can bring anything. */
    static void check(Catalogue catalogue, Reading reading) {
        if (catalogue.families().isEmpty()) {
            return;
        }
        UnusedParts unused = new UnusedParts();
        catalogue.parts().values().forEach(unused::usedBy);
        catalogue.families().values().forEach(unused::usedBy);
        catalogue.parts().values().stream()
                .filter(part -> part.upkeep().replacedBy() == null && !unused.used.contains(part.number()))
                .forEach(part -> reading.faults()
                        .add(reading.sources()
                                .of(part)
                                .fault(
                                        part.number() + ", which nothing uses",
                                        "a part that stands in a line, an assembly, a need, as a port's blank or as an alternate",
                                        "Use it, or remove it from the part master.")));
    }

    private void usedBy(Part part) {
        part.contains().stream().map(Contained::part).forEach(used::add);
        needed(part.needs());
        part.ports().stream().map(Port::blank).filter(Objects::nonNull).forEach(used::add);
        // What only follows another part may still be sold as its spare.
        Stream.ofNullable(part.upkeep().replacedBy())
                .map(Upkeep.Successor::part)
                .forEach(used::add);
        part.upkeep().alternates().stream().map(Upkeep.Alternate::part).forEach(used::add);
    }

    private void usedBy(Family family) {
        for (Line line : family.lines().toList()) {
            used.add(line.part());
            needed(line.needs());
        }
        for (Companion companion : family.companions()) {
            needed(companion.needs());
        }
    }

    private void needed(List<Need> needs) {
        needs.forEach(need -> used.add(need.part()));
    }
}
