package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;

/** All that must hold between files. */
final class CrossChecks {

    private CrossChecks() {}

    static void all(Catalogue catalogue, Reading reading) {
        reading.names().compare(reading.faults());
    }
}
