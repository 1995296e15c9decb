package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Family;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.catalogue.Upkeep;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.SourceLocation;
import boltlore.measure.PartNumber;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What of a catalogue with faults still hangs together, so that one fault does not hide what else is wrong. */
final class SoundRest {

    private final Path folder;
    private final Catalogue catalogue;
    private final Reading reading;
    private final List<Fault> faults;
    private final boolean compared;

    /**
     * Looks at the faults found so far.
     *
     * @param compared whether all files were there to be compared with one another
     */
    SoundRest(Path folder, Catalogue catalogue, Reading reading, boolean compared) {
        this.folder = folder;
        this.catalogue = catalogue;
        this.reading = reading;
        this.faults = reading.faults().all();
        this.compared = compared;
    }

    PartlyRead partlyRead(Outcome<Catalogue> whole) {
        Map<PartNumber, Part> parts = parts();
        boolean workshopKnown = faults.stream()
                .noneMatch(fault -> isUnder("workshop", fault)
                        || isUnder(CatalogueFolder.FINISHES, fault)
                        || isUnder(CatalogueFolder.MATERIALS, fault));
        boolean allParts =
                compared && workshopKnown && parts.size() == catalogue.parts().size();
        Map<String, Family> families = sifted(catalogue.families(), family -> allParts && isSound(family));
        Catalogue rest = new Catalogue(
                catalogue.workshop(),
                catalogue.finishes(),
                catalogue.materials(),
                parts,
                families,
                catalogue.revision(),
                catalogue.prices(),
                catalogue.shipping(),
                catalogue.capacity(),
                catalogue.stores(),
                catalogue.house());
        return new PartlyRead(
                whole,
                rest,
                faulty(parts.values()),
                workshopKnown,
                families.size() == catalogue.families().size());
    }

    private boolean isSound(Family family) {
        return faults.stream().noneMatch(fault -> isUnder("families/" + family.name(), fault));
    }

    private boolean isUnder(String path, Fault fault) {
        return Path.of(fault.file()).startsWith(folder.resolve(path));
    }

    private Set<PartNumber> faulty(Collection<Part> parts) {
        return parts.stream().filter(this::isFaulty).map(Part::number).collect(Collectors.toSet());
    }

    private boolean isFaulty(Part part) {
        SourceLocation spot = reading.sources().of(part);
        String pointer = spot.pointer();
        return faults.stream()
                .anyMatch(fault -> fault.file().equals(spot.file())
                        && (fault.place().equals(pointer) || fault.place().startsWith(pointer + "/")));
    }

    /** The parts that name only parts among them, without those that contain or need themselves or lie too deep. */
    private Map<PartNumber, Part> parts() {
        Map<PartNumber, Part> kept = catalogue.parts();
        Map<PartNumber, Part> before;
        do {
            before = kept;
            Map<PartNumber, Part> built = bottomUp(before);
            kept = sifted(built, part -> built.keySet().containsAll(besideIt(part)));
        } while (kept.size() < before.size());
        return kept;
    }

    private static Map<PartNumber, Part> bottomUp(Map<PartNumber, Part> parts) {
        Map<PartNumber, Part> built = new TreeMap<>();
        Map<PartNumber, Integer> levels = new HashMap<>();
        int before;
        do {
            before = built.size();
            parts.forEach((number, part) -> {
                int level = level(part, levels);
                if (built.keySet().containsAll(children(part)) && level <= PartLoops.DEEPEST) {
                    built.put(number, part);
                    levels.put(number, level);
                }
            });
        } while (built.size() > before);
        return built;
    }

    private static int level(Part part, Map<PartNumber, Integer> levels) {
        return 1
                + part.contains().stream()
                        .mapToInt(child -> levels.getOrDefault(child.part(), 0))
                        .max()
                        .orElse(0);
    }

    private static List<PartNumber> children(Part part) {
        return Stream.concat(
                        part.contains().stream().map(Contained::part),
                        part.needs().stream().map(Need::part))
                .toList();
    }

    private static List<PartNumber> besideIt(Part part) {
        Stream<PartNumber> ports = part.ports().stream()
                .flatMap(port -> Stream.concat(port.mates().stream(), Stream.ofNullable(port.blank())));
        Upkeep upkeep = part.upkeep();
        Stream<PartNumber> instead = Stream.concat(
                Stream.ofNullable(upkeep.replacedBy()).map(Upkeep.Successor::part),
                upkeep.alternates().stream().map(Upkeep.Alternate::part));
        return Stream.concat(ports, instead).toList();
    }

    private static <K, V> Map<K, V> sifted(Map<K, V> all, Predicate<V> kept) {
        Map<K, V> left = new TreeMap<>();
        all.forEach((key, value) -> {
            if (kept.test(value)) {
                left.put(key, value);
            }
        });
        return left;
    }
}
