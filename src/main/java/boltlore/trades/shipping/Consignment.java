package boltlore.trades.shipping;

import java.util.List;
import java.util.stream.Stream;

/** Orders that travel in one vehicle; their dangerous goods count together. */
public record Consignment(List<Shipment> shipments) {

    public Consignment {
        shipments = List.copyOf(shipments);
    }

    public Stream<DangerousGoods> dangerous() {
        return shipments.stream().flatMap(shipment -> shipment.dangerous().stream());
    }

    public RoadPoints points() {
        return RoadPoints.of(dangerous().toList());
    }
}
