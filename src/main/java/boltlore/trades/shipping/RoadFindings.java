package boltlore.trades.shipping;

import boltlore.measure.Digits;
import java.util.List;

/** What the road rule for small loads comes to, over all that goes in the vehicle. */
final class RoadFindings {

    private RoadFindings() {}

    static List<ShipFinding> of(Shipment shipment, Consignment together) {
        if (shipment.route().by() != By.ROAD || shipment.dangerous().isEmpty()) {
            return List.of();
        }
        RoadPoints points = together.points();
        String load = Digits.upTo(points.points(), 1) + " points"
                + others(together.shipments().size() - 1);
        return List.of(ShipFinding.look("Road", load + ", against 1000 for small loads: " + meaning(points)));
    }

    private static String others(int others) {
        return switch (others) {
            case 0 -> "";
            case 1 -> " with the other order in the vehicle";
            default -> " with the other " + others + " orders in the vehicle";
        };
    }

    private static String meaning(RoadPoints points) {
        return points.relieved()
                ? "the relief applies to " + Digits.upTo(RoadPoints.LIMIT.subtract(points.points()), 1)
                        + " points more. Transport document, extinguisher and trained people are still asked for."
                : "above the limit. Orange plates, a driver trained for dangerous goods and the full document, or fewer"
                        + " batteries in one vehicle.";
    }
}
