package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.OwnCrate;
import boltlore.catalogue.Position;
import boltlore.faults.Nearest;
import java.util.List;

/** A crate of its own is one that positions of some family are packed in; without any there is nothing to compare. */
final class OwnCrateCheck {

    private OwnCrateCheck() {}

    static void check(Catalogue catalogue, Reading reading) {
        List<String> bags = catalogue.families().values().stream()
                .flatMap(family -> family.positions().stream())
                .map(Position::bag)
                .filter(bag -> !bag.isEmpty())
                .distinct()
                .toList();
        catalogue.shipping().ownCrates().stream()
                .filter(own -> !bags.isEmpty()
                        && !bags.contains(own.bag())
                        && reading.sources().know(own))
                .forEach(own -> fault(own, bags, reading));
    }

    private static void fault(OwnCrate own, List<String> bags, Reading reading) {
        reading.faults()
                .add(reading.sources()
                        .of(own)
                        .fault(
                                "'" + own.bag() + "', which no position is packed in",
                                "a bag or crate of a position",
                                Nearest.advice(own.bag(), bags, "Remove it.")));
    }
}
