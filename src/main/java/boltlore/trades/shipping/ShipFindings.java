package boltlore.trades.shipping;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** All that a person must look at before an order's crates leave. */
public final class ShipFindings {

    private ShipFindings() {}

    /** What stops first. */
    public static List<ShipFinding> of(Shipment shipment, Consignment together) {
        return Stream.of(
                        CrateFindings.of(shipment),
                        DangerousFindings.of(shipment),
                        BatteryFindings.of(shipment),
                        RoadFindings.of(shipment, together),
                        BorderFindings.of(shipment))
                .flatMap(List::stream)
                .sorted(Comparator.comparing((ShipFinding finding) -> !finding.stops()))
                .toList();
    }

    public static boolean stop(Shipment shipment, Consignment together) {
        return of(shipment, together).stream().anyMatch(ShipFinding::stops);
    }
}
