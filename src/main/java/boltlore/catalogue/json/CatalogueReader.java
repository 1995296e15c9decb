package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.faults.Outcome;
import java.nio.file.Path;

/** Reads a catalogue folder. */
public final class CatalogueReader {

    private CatalogueReader() {}

    /** The checked catalogue, or everything that is wrong with it. Schemas and orders in the folder are left alone. */
    public static Outcome<Catalogue> read(Path folder) {
        return CatalogueFolder.look(folder).then(CatalogueReader::read);
    }

    private static Outcome<Catalogue> read(CatalogueFolder folder) {
        Trees trees = Trees.read(folder.files(), folder.faults());
        Reading reading = Reading.begin();
        Catalogue catalogue = new Assembly(reading, trees).catalogue();
        if (trees.faults().none()) {
            CrossChecks.all(catalogue, reading);
        }
        // What a missing or broken file would have said is not known, so nothing is compared with it.
        reading.faults().addAll(trees.faults().all());
        return reading.faults().orElse(catalogue);
    }
}
