package boltlore.trades.testing;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.bill.Origin;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Feature;
import boltlore.choices.Conditions;
import boltlore.measure.PositionName;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Where in one kit something stands. */
final class KitPlaces {

    private final Bill bill;

    KitPlaces(Bill bill) {
        this.bill = bill;
    }

    boolean holds(Condition condition) {
        return Conditions.holds(
                condition, bill.resolved().choices(), bill.resolved().kit().filled()::contains);
    }

    /** What the position's own lines put there, one place a line; nothing where it is empty or left out. */
    Stream<TestedAt> at(PositionName position) {
        return bill.items().stream()
                .filter(item -> item.origin() instanceof Origin.OwnLine)
                .filter(item -> item.position().name().equals(position))
                .map(item -> new TestedAt(item.position(), item.part(), 1, 1));
    }

    /** Every piece in the kit that has an earth point: what must stay bare must conduct. */
    Stream<TestedAt> earthPoints() {
        return bill.all().filter(KitPlaces::hasEarthPoint).flatMap(KitPlaces::pieces);
    }

    private static boolean hasEarthPoint(Item item) {
        List<Feature> features =
                item.part().coat() == null ? List.of() : item.part().coat().features();
        return features.stream().anyMatch(feature -> feature.kind() == Feature.Kind.EARTH);
    }

    private static Stream<TestedAt> pieces(Item item) {
        int pieces = Math.max(1, item.quantity().intValue());
        return IntStream.rangeClosed(1, pieces)
                .mapToObj(piece -> new TestedAt(item.position(), item.part(), piece, pieces));
    }
}
