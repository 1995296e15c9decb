package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Hand;
import boltlore.catalogue.Pair;
import boltlore.catalogue.Part;
import boltlore.json.SourceLocation;
import boltlore.measure.PartNumber;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** A pair has two hands, and each family says which of them ship. */
final class PairsCheck {

    private final Catalogue catalogue;
    private final Reading reading;

    PairsCheck(Catalogue catalogue, Reading reading) {
        this.catalogue = catalogue;
        this.reading = reading;
    }

    void check(Family family, Set<PartNumber> reach) {
        family.pairs().forEach(this::bothHands);
        for (PartNumber number : reach) {
            Part part = catalogue.parts().get(number);
            if (part != null && part.handed() != null) {
                declared(part, part.handed().pair(), family);
            }
        }
    }

    private void bothHands(Pair pair) {
        Set<Hand> missing = EnumSet.allOf(Hand.class);
        catalogue.parts().values().stream()
                .filter(part -> part.handed() != null && part.handed().pair().equals(pair.name()))
                .forEach(part -> missing.remove(part.handed().hand()));
        SourceLocation location = reading.sources().of(pair);
        for (Hand hand : missing) {
            String written = hand.name().toLowerCase(Locale.ROOT);
            reading.faults()
                    .add(location.fault(
                            "pair '" + pair.name() + "' without a " + written + " part",
                            "a left and a right part of the pair",
                            "Give a part \"pair\": \"" + pair.name() + "\" and \"hand\": \"" + written + "\"."));
        }
        if (pair instanceof Pair.One one
                && one.leftValue().equals(one.rightValue())
                && !one.leftValue().isEmpty()) {
            String found = "'" + one.leftValue() + "' for both hands";
            reading.faults().add(location.fault(found, "one value for each hand", "Change one of the two."));
        }
    }

    private static String listed(List<String> known) {
        return known.isEmpty() ? "; it has none" : ": " + String.join(", ", known);
    }

    private void declared(Part part, String pair, Family family) {
        List<String> known = family.pairs().stream().map(Pair::name).toList();
        if (!known.contains(pair)) {
            reading.faults()
                    .add(reading.sources()
                            .of(part)
                            .fault(
                                    "pair '" + pair + "' of " + part.number() + ", which family '" + family.name()
                                            + "' does not list",
                                    "one of the family's pairs" + listed(known),
                                    "Say under 'pairs' in family.json whether one or both hands ship."));
        }
    }
}
