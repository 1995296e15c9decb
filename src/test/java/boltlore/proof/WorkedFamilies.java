package boltlore.proof;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import boltlore.proof.kinds.Kinds;
import java.nio.file.Path;

/** Examples from the literature, written as families of a catalogue of their own. */
public final class WorkedFamilies {

    private WorkedFamilies() {}

    public static Catalogue catalogue() {
        return Read.CATALOGUE;
    }

    public static FamilyProof prove(String family) {
        Catalogue all = catalogue();
        return Prover.prove(all, all.family(family), Kinds.all(), Deadline.NONE, Prover.Progress.NONE);
    }

    /** 'colour=black', or nothing for any order. */
    static Condition condition(String of) {
        String[] choice = of.split("=", -1);
        return of.isEmpty() ? Condition.ALWAYS : Says.is(choice[0], choice[1]);
    }

    private static final class Read {
        private static final Catalogue CATALOGUE = read();

        private static Catalogue read() {
            Outcome<Catalogue> outcome = CatalogueReader.read(Path.of("src/test/resources/worked-families"));
            if (outcome instanceof Outcome.Sound<Catalogue> sound) {
                return sound.value();
            }
            throw new AssertionError("The worked examples have faults: " + outcome.faults());
        }
    }
}
