package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.cutting.CutPlan;
import boltlore.cutting.CutPlanner;
import boltlore.cutting.Remnant;
import java.util.List;
import java.util.stream.Stream;

/** Orders to cut together, resolved, and the remnants at hand. */
record CutKits(Catalogue catalogue, List<OrderKit> kits, List<Remnant> remnants) {

    /** Orders that something stops, which stay out of the list. */
    List<OrderKit> stopped() {
        return kits.stream().filter(kit -> !kit.issuesSheets()).toList();
    }

    List<Bill> bills() {
        return kits.stream()
                .filter(OrderKit::issuesSheets)
                .flatMap(kit -> Stream.ofNullable(kit.bill()))
                .toList();
    }

    CutPlan plan() {
        return CutPlanner.of(bills(), catalogue, remnants);
    }
}
