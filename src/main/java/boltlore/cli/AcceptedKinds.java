package boltlore.cli;

import boltlore.catalogue.Family;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.proof.Acceptable;
import boltlore.trades.orders.Trades;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;

/** Whether what families accept are kinds of findings that the proofs or the trades know. */
final class AcceptedKinds {

    private AcceptedKinds() {}

    /** The families, or everything that they accept and cannot. */
    static <T extends Collection<Family>> Outcome<T> known(T families, Path catalogue) {
        Acceptable acceptable = new Acceptable(ProvedKinds.all(), Trades.kinds().toList());
        List<Fault> faults = families.stream()
                .flatMap(family -> acceptable.faults(family, file(catalogue, family)).stream())
                .toList();
        return faults.isEmpty() ? Outcome.sound(families) : Outcome.faulty(faults);
    }

    private static String file(Path catalogue, Family family) {
        return catalogue
                .resolve("families")
                .resolve(family.name())
                .resolve("family.json")
                .toString();
    }
}
