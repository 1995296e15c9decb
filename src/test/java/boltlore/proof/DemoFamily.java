package boltlore.proof;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import boltlore.proof.kinds.Kinds;
import java.nio.file.Path;

/** The demo families as they stand in the catalogue folder, read once. */
public final class DemoFamily {

    public static final String VAN = "pannier-van";

    private DemoFamily() {}

    public static Catalogue catalogue() {
        return Read.CATALOGUE;
    }

    public static FamilyProof prove(Catalogue catalogue, String family) {
        return prove(catalogue, catalogue.family(family));
    }

    public static FamilyProof prove(Catalogue catalogue, Family family) {
        return Prover.prove(catalogue, family, Kinds.all(), Deadline.NONE, Prover.Progress.NONE);
    }

    private static final class Read {
        private static final Catalogue CATALOGUE = read();

        private static Catalogue read() {
            Outcome<Catalogue> outcome = CatalogueReader.read(Path.of("catalog"));
            if (outcome instanceof Outcome.Sound<Catalogue> sound) {
                return sound.value();
            }
            throw new AssertionError("The demo catalogue has faults: " + outcome.faults());
        }
    }
}
