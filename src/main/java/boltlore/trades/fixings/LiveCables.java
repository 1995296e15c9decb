package boltlore.trades.fixings;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.catalogue.Part;
import boltlore.measure.PartNumber;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The high-voltage cables of a kit, with the lugs, connectors and glands at their ends.
 *
 * @param ends parts that such cables are made of and that are counted
 */
record LiveCables(Set<PartNumber> ends) {

    static LiveCables of(Bill bill) {
        return new LiveCables(bill.all()
                .filter(item -> item.inside().stream().map(Item::part).anyMatch(LiveCables::isLiveWire))
                .flatMap(cable -> cable.inside().stream())
                .map(Item::part)
                .filter(part -> !isByTheMetre(part))
                .map(Part::number)
                .collect(Collectors.toUnmodifiableSet()));
    }

    boolean has(Item item) {
        return ends.contains(item.part().number()) || item.all().map(Item::part).anyMatch(LiveCables::isLiveWire);
    }

    private static boolean isLiveWire(Part part) {
        return isByTheMetre(part) && part.cautions().contains("high-voltage");
    }

    private static boolean isByTheMetre(Part part) {
        return part.unit().equals("m");
    }
}
