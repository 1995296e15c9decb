package boltlore.catalogue.json;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Companion;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Electrics;
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
import java.util.stream.Collectors;
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
                                        part.number() + ", which nothing uses" + lost(catalogue, part),
                                        "a part that stands in a line, an assembly, a need, as a port's blank or as an alternate",
                                        "Use it, or remove it from the part master.")));
    }

    /** What is without its protection or its battery where the part is gone, as the families' electrics say. */
    private static String lost(Catalogue catalogue, Part part) {
        String lost = catalogue.families().values().stream()
                .flatMap(family -> lost(family.electrics(), part.number())
                        .map(what -> "electrics.json of " + family.name() + " has it as " + what))
                .collect(Collectors.joining("; "));
        return lost.isEmpty() ? "" : ", although " + lost;
    }

    private static Stream<String> lost(Electrics electrics, PartNumber part) {
        Stream<String> fuses = electrics.fuses().stream()
                .filter(fuse -> fuse.part().equals(part))
                .map(fuse -> "fuse '" + fuse.name() + "' of branches "
                        + electrics.branches().stream()
                                .filter(branch -> isProtected(branch.protection(), fuse.name()))
                                .map(Branch::name)
                                .collect(Collectors.joining(", "))
                        + ", which are without it");
        Stream<String> cables = electrics.branches().stream()
                .filter(branch -> branch.cable().equals(part))
                .map(branch -> "the cable of branch " + branch.name());
        Stream<String> resistors = electrics.resistors().stream()
                .filter(resistor -> resistor.part().equals(part))
                .map(resistor -> "the precharge resistor");
        Stream<String> packs = electrics.packs().stream()
                .filter(pack -> pack.module().equals(part))
                .map(pack -> "the module of pack " + pack.name());
        return Stream.of(fuses, cables, resistors, packs).flatMap(all -> all);
    }

    private static boolean isProtected(Branch.Protection protection, String fuse) {
        return (protection.fuse() != null && protection.fuse().name().equals(fuse))
                || (protection.farEnd() != null
                        && fuse.equals(protection.farEnd().fuse()));
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
