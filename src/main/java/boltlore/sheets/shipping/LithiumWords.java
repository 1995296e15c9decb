package boltlore.sheets.shipping;

import boltlore.shipping.AirRules;
import boltlore.shipping.Batteries;
import boltlore.shipping.By;
import boltlore.shipping.DangerousGoods;
import boltlore.shipping.Packed;
import boltlore.shipping.Shipment;
import boltlore.shipping.UnNumber;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What lithium batteries in a kit mean, in sentences. */
final class LithiumWords {

    private LithiumWords() {}

    static String classification() {
        return "The battery of a kit lies in its own crate and travels as " + UnNumber.LITHIUM_ION.un() + ", never as "
                + UnNumber.LITHIUM_VEHICLE.un()
                + ", which is for vehicles with their battery in them. A drive unit and its"
                + " battery in one package may be " + UnNumber.LITHIUM_ION_WITH_EQUIPMENT.un()
                + " only where a dangerous-goods safety adviser classifies them so. Traction batteries are far above 20 Wh"
                + " a cell and 100 Wh a battery: no small-battery relief.";
    }

    /** What the way they travel asks for. */
    static List<String> byRoute(DangerousGoods goods, Shipment shipment) {
        List<String> says = new ArrayList<>();
        charge(goods, shipment).ifPresent(says::add);
        if (shipment.route().by() == By.AIR) {
            says.add(
                    "By air: cargo aircraft only, forbidden on passenger aircraft; state of charge "
                            + AirRules.MOST_CHARGE_PERCENT + " % at most; above " + AirRules.MOST_NET_KG
                            + " kg of batteries in a package the States concerned must approve; damaged or defective ones never fly.");
        } else if (shipment.route().by() == By.SEA) {
            says.add(
                    "By sea: the shipping line accepts the booking before the crates leave, and stowage is hers to say.");
        }
        return says;
    }

    private static Optional<String> charge(DangerousGoods goods, Shipment shipment) {
        String told = goods.packed()
                .map(Packed::goods)
                .map(each -> each.name() + " "
                        + percent(Batteries.known(shipment.shipping(), each).chargePercent()))
                .distinct()
                .collect(Collectors.joining(", "));
        return told.isEmpty() ? Optional.empty() : Optional.of("State of charge: " + told + ".");
    }

    private static String percent(@Nullable BigDecimal percent) {
        return percent == null ? "not known" : Figures.number(percent, 0) + " %";
    }

    /** Where the test summaries of what is sent are kept; null where nobody says. */
    static @Nullable String testSummaries(Shipment shipment) {
        String all = shipment.dangerous().stream()
                .filter(DangerousGoods::lithium)
                .flatMap(DangerousGoods::packed)
                .map(packed ->
                        Batteries.known(shipment.shipping(), packed.goods()).testSummary())
                .filter(summary -> !summary.isEmpty())
                .distinct()
                .collect(Collectors.joining("; "));
        return all.isEmpty() ? null : all;
    }
}
