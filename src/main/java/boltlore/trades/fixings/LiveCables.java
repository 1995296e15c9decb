package boltlore.trades.fixings;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.catalogue.Customs;
import boltlore.catalogue.Part;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The high-voltage cables of a kit, and the lugs and other electrical goods that are fitted among them.
 *
 * @param subSystems in which such cables lie
 */
record LiveCables(Set<String> subSystems) {

    /** Electrical goods: chapter 85 of the Harmonized System, from memory. */
    private static final String ELECTRICAL = "85";

    static LiveCables of(Bill bill) {
        return new LiveCables(bill.items().stream()
                .filter(LiveCables::isCable)
                .map(item -> item.position().subSystem())
                .collect(Collectors.toUnmodifiableSet()));
    }

    boolean has(Item item) {
        return isCable(item)
                || (isElectrical(item.part())
                        && subSystems.contains(item.position().subSystem()));
    }

    private static boolean isCable(Item item) {
        return item.all().map(Item::part).anyMatch(LiveCables::isLiveWire);
    }

    private static boolean isLiveWire(Part part) {
        return part.unit().equals("m") && part.cautions().contains("high-voltage");
    }

    private static boolean isElectrical(Part part) {
        Customs customs = part.customs();
        return customs != null && customs.hs().startsWith(ELECTRICAL);
    }
}
