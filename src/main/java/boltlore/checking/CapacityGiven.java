package boltlore.checking;

import boltlore.catalogue.Capacity;
import boltlore.catalogue.Capacity.KitWorked;
import boltlore.catalogue.Capacity.OpenHours;
import boltlore.catalogue.Capacity.WorkCentre;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Operation;
import boltlore.catalogue.Source;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.stream.Stream;

/** Where a workshop says what its work centres can do, all its work has one, and the oven's day is one figure. */
final class CapacityGiven {

    private static final BigDecimal MINUTES_IN_AN_HOUR = BigDecimal.valueOf(60);

    private CapacityGiven() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        Capacity capacity = catalogue.capacity();
        return capacity == null
                ? Stream.of()
                : Stream.of(operations(catalogue, capacity), kitWork(catalogue, capacity), oven(catalogue, capacity))
                        .flatMap(remarks -> remarks);
    }

    /** What another firm does needs no centre here. */
    private static Stream<Remark> operations(Catalogue catalogue, Capacity capacity) {
        return catalogue.parts().values().stream()
                .filter(part -> part.source() == Source.MAKE)
                .flatMap(part -> part.making().operations().stream())
                .map(Operation::operation)
                .distinct()
                .filter(operation -> catalogue.prices() == null
                        || !catalogue.prices().labour().of(operation).outside())
                .filter(operation -> capacity.of(operation).isEmpty())
                .map(operation -> new Remark(
                        "operation " + operation,
                        Check.NO_CENTRE,
                        "at no work centre of capacity.json",
                        "one that it is worked at, or 'outside' in pricing.json",
                        "Add it under 'operations' of a centre; until then no date is promised"));
    }

    private static Stream<Remark> kitWork(Catalogue catalogue, Capacity capacity) {
        return Stream.of(KitWorked.values())
                .filter(work -> isDone(work, catalogue) && capacity.of(work).isEmpty())
                .map(work -> work.name().toLowerCase(Locale.ROOT))
                .map(key -> new Remark(
                        "work on kits",
                        Check.NO_CENTRE,
                        "no work centre of capacity.json with '" + key + "'",
                        "one that does it",
                        "Write \"" + key + "\": true under a centre; until then no date is promised"));
    }

    /** Coated where there is an own oven; the rest where the price book says what it takes. */
    private static boolean isDone(KitWorked work, Catalogue catalogue) {
        return work == KitWorked.COATS ? !catalogue.workshop().coating().ovens().isEmpty() : catalogue.prices() != null;
    }

    /** The coating plan counts days by the minutes in coating.json, the work schedule by the hours in capacity.json. */
    private static Stream<Remark> oven(Catalogue catalogue, Capacity capacity) {
        int minutes = catalogue.workshop().coating().time().dayMinutes();
        return capacity.of(KitWorked.COATS).stream()
                .filter(centre -> minutes > 0 && differs(centre, minutes))
                .map(centre -> new Remark(
                        "work centre " + centre.name(),
                        Check.OVEN_DAY,
                        "another day than 'dayMinutes' in coating.json, " + minutes + " minutes",
                        "the same hours a day in both files",
                        "Correct one of the two"));
    }

    private static boolean differs(WorkCentre centre, int minutes) {
        OpenHours open = centre.open();
        return open != null
                && open.hoursPerDay().multiply(MINUTES_IN_AN_HOUR).compareTo(BigDecimal.valueOf(minutes)) != 0;
    }
}
