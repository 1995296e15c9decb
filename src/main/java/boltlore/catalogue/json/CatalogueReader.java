package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/** Reads a catalogue folder. */
public final class CatalogueReader {

    private static final String NOT_COMPARED =
            "Until then the files are not fully compared with one another, and more may be found.";

    private CatalogueReader() {}

    /** The checked catalogue, or everything that is wrong with it. Schemas and orders in the folder are left alone. */
    public static Outcome<Catalogue> read(Path folder) {
        return readAsFar(folder).then(PartlyRead::whole);
    }

    /** The same, with what can be compared though something is wrong; faulty only where there is no folder. */
    public static Outcome<PartlyRead> readAsFar(Path folder) {
        return CatalogueFolder.look(folder).then(files -> Outcome.sound(read(folder, files, Map.of())));
    }

    /** The files that make up the catalogue, by their path within the folder with '/' between the steps. */
    public static Outcome<SortedMap<String, Path>> files(Path folder) {
        return CatalogueFolder.look(folder).then(found -> found.faults().orElse(found.files()));
    }

    /**
     * Two revisions of a catalogue with the days and chassis numbers of both cut where an effectivity of either begins or ends, so
     * that a piece of one is a piece of the other.
     */
    public static Outcome<Together> readTogether(Path earlier, Path later) {
        return read(earlier)
                .then(before -> read(later)
                        .then(after -> cut(before, after)
                                ? Outcome.sound(new Together(before, after))
                                : read(earlier, after)
                                        .then(same -> read(later, before)
                                                .then(other -> Outcome.sound(new Together(same, other))))));
    }

    /** An earlier revision and a later one. */
    public record Together(Catalogue before, Catalogue after) {}

    /** Whether no family of both is cut otherwise in the other. */
    private static boolean cut(Catalogue before, Catalogue after) {
        return before.families().values().stream()
                .filter(family -> after.families().containsKey(family.name()))
                .allMatch(family ->
                        family.scales().equals(after.family(family.name()).scales()));
    }

    private static Outcome<Catalogue> read(Path folder, Catalogue alsoCut) {
        return CatalogueFolder.look(folder)
                .then(files -> read(folder, files, alsoCut.families()).whole());
    }

    /** @param alsoCut families whose days and numbers are cut as well where those of the same name here are */
    private static PartlyRead read(Path folder, CatalogueFolder files, Map<String, Family> alsoCut) {
        Trees trees = Trees.read(files.files(), files.faults());
        Reading reading = Reading.begin();
        Catalogue catalogue = new Assembly(reading, trees, alsoCut).catalogue();
        boolean compared = trees.faults().none();
        if (compared) {
            CrossChecks.all(catalogue, reading);
            DocumentFiles.check(folder, catalogue, reading);
        } else {
            trees.slips().ifPresent(unread -> reading.names().compareBeside(unread, reading.faults()));
        }
        reading.faults().addAll(withConsequence(trees.faults().all()));
        Outcome<Catalogue> whole = reading.faults().orElse(catalogue);
        return whole.faults().isEmpty()
                ? PartlyRead.sound(catalogue)
                : new SoundRest(folder, catalogue, reading, compared).partlyRead(whole);
    }

    /** What a missing or broken file would have said is not known, so nothing is compared with it: said once. */
    private static List<Fault> withConsequence(List<Fault> faults) {
        List<Fault> told = new ArrayList<>(faults.stream().sorted().toList());
        told.stream().findFirst().ifPresent(first -> told.set(0, first.advising(NOT_COMPARED)));
        return told;
    }
}
