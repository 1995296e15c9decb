package boltlore.trades.shipping;

import boltlore.measure.Digits;
import boltlore.trades.shipping.UnNumber.Travels;
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
        return "The battery of a kit lies in its own crate and travels as " + un(Travels.ALONE) + ", never as "
                + un(Travels.IN_VEHICLE) + ", which is for vehicles with their battery in them. A drive unit and its"
                + " battery in one package may be " + un(Travels.WITH_EQUIPMENT)
                + " only where a dangerous-goods safety adviser classifies them so. Traction batteries are far above "
                + Papers.SMALL_CELL_WH + " Wh a cell and " + Papers.SMALL_BATTERY_WH
                + " Wh a battery: no exemption as small batteries.";
    }

    private static String un(Travels how) {
        return UnNumber.ofLithiumIon(how).un();
    }

    /** What the way they travel asks for. */
    static List<String> byRoute(DangerousGoods goods, Shipment shipment) {
        List<String> says = new ArrayList<>();
        charge(goods, shipment).ifPresent(says::add);
        switch (shipment.route().by()) {
            case ROAD -> {}
            case SEA ->
                says.add("By sea (" + By.SEA.rules()
                        + "): book before the crates leave; whether and where they are stowed is for the"
                        + " shipping line to say.");
            case AIR -> says.add(byAir(goods));
        }
        return says;
    }

    private static String byAir(DangerousGoods goods) {
        boolean cargo = goods.entry().filter(AirRules::cargoAircraftOnly).isPresent();
        return "By air (" + By.AIR.rules() + "): "
                + (cargo ? "cargo aircraft only, forbidden on passenger aircraft; " : "")
                + "state of charge " + AirRules.MOST_CHARGE_PERCENT + " % at most, from 2026 on also of "
                + un(Travels.WITH_EQUIPMENT) + " packed with equipment and of " + un(Travels.IN_VEHICLE)
                + " above 100 Wh, which may have " + AirRules.MOST_INDICATED_PERCENT + " % indicated instead; above "
                + AirRules.MOST_NET_KG + " kg of batteries in a package the States concerned must approve; damaged or"
                + " defective ones never fly.";
    }

    private static Optional<String> charge(DangerousGoods goods, Shipment shipment) {
        String told = goods.packed()
                .map(Packed::goods)
                .map(each -> each.name() + " " + percent(shipment.known(each).chargePercent()))
                .distinct()
                .collect(Collectors.joining(", "));
        return told.isEmpty() ? Optional.empty() : Optional.of("State of charge: " + told + ".");
    }

    private static String percent(@Nullable BigDecimal percent) {
        return percent == null ? "not known" : Digits.upTo(percent, 0) + " %";
    }

    /** Where the test summaries of what is sent are kept; null where nobody says. */
    static @Nullable String testSummaries(Shipment shipment) {
        String all = shipment.dangerous().stream()
                .filter(DangerousGoods::lithium)
                .flatMap(DangerousGoods::packed)
                .map(packed -> shipment.known(packed.goods()).testSummary())
                .filter(summary -> !summary.isEmpty())
                .distinct()
                .collect(Collectors.joining("; "));
        return all.isEmpty() ? null : all;
    }
}
