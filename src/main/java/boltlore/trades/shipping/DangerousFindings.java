package boltlore.trades.shipping;

import boltlore.catalogue.Customs;
import boltlore.catalogue.Part;
import boltlore.catalogue.Transport;
import boltlore.findings.Finding;
import boltlore.order.Extra;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Dangerous goods that lack what they must say of themselves, and what they come to in one vehicle. */
final class DangerousFindings {

    /** Lithium-ion accumulators (Harmonized System 2022, subheading 8507.60). */
    private static final String LITHIUM_ION_HS = "850760";

    private static final Set<String> LITHIUM = Set.of("UN 3090", "UN 3091", "UN 3480", "UN 3481", "UN 3536", "UN 3556");

    private DangerousFindings() {}

    static List<Finding> find(Shipment shipment, Consignment together) {
        List<Goods> goods = Stream.concat(
                        shipment.crates().stream().flatMap(crate -> crate.packed().stream()),
                        shipment.tooLarge().stream())
                .map(Packed::goods)
                .distinct()
                .toList();
        List<Finding> findings = new ArrayList<>();
        shipment.order().extra().forEach(each -> said(each).ifPresent(findings::add));
        goods.forEach(each -> unmarked(each).ifPresent(findings::add));
        goods.forEach(each -> hidden(each).ifPresent(findings::add));
        shipment.dangerous().forEach(each -> entry(each).ifPresent(findings::add));
        goods.forEach(each -> incomplete(each).ifPresent(findings::add));
        if (shipment.route().by() == By.ROAD
                && !shipment.overseas()
                && !shipment.dangerous().isEmpty()) {
            findings.add(points(together));
        }
        return findings;
    }

    /** A one-off of ours that smells of dangerous goods; what the customer supplies does not travel with us. */
    private static Optional<Finding> said(Extra extra) {
        if (extra.part() != null
                || extra.suppliedByCustomer()
                || (extra.goods() != null && extra.goods().transport() != null)) {
            return Optional.empty();
        }
        ShippingFinding kind =
                extra.goods() == null ? ShippingFinding.GOODS_NOT_SAID : ShippingFinding.GOODS_SAID_HARMLESS;
        return GoodsWords.in(extra.says())
                .map(word -> Finding.of(kind, extra.says(), "extra", extra.says(), "word", word.replace("*", "")));
    }

    /** A battery by its customs code that no UN number is known of. */
    static Optional<Finding> unmarked(Goods goods) {
        Part part = goods.part();
        Customs customs = part == null ? null : part.customs();
        if (customs == null
                || goods.transport() != null
                || !Tariff.digits(customs.hs()).startsWith("8507")) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(
                ShippingFinding.BATTERY_WITHOUT_UN_NUMBER, goods.name(), "goods", goods.says(), "hs", customs.hs()));
    }

    /** Lithium by its customs code, its caution or its words, under the number of something else. */
    private static Optional<Finding> hidden(Goods goods) {
        Transport transport = goods.transport();
        if (transport == null || LITHIUM.contains(transport.un()) || !smellsOfLithium(goods)) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(
                ShippingFinding.LITHIUM_UNDER_ANOTHER_NUMBER,
                goods.name(),
                "goods",
                goods.says(),
                "un",
                transport.un()));
    }

    private static boolean smellsOfLithium(Goods goods) {
        Part part = goods.part();
        return part == null ? goods.name().toLowerCase(Locale.ROOT).contains("lithium") : lithium(part);
    }

    static boolean lithium(Part part) {
        Customs customs = part.customs();
        return part.cautions().contains("lithium")
                || (customs != null && Tariff.digits(customs.hs()).startsWith(LITHIUM_ION_HS));
    }

    /** Crates of dangerous goods hold one UN number and nothing else, so that a battery in one lies there without equipment. */
    private static boolean bareBattery(Goods goods) {
        Customs customs = goods.part() == null ? null : goods.part().customs();
        return customs != null && Tariff.LITHIUM_ION.covers(customs.hs());
    }

    private static Optional<Finding> entry(DangerousGoods dangerous) {
        UnNumber un = dangerous.entry().orElse(null);
        boolean alone = un == UnNumber.LITHIUM_ION_WITH_EQUIPMENT
                && dangerous.packed().map(Packed::goods).anyMatch(DangerousFindings::bareBattery);
        if (un != null && un != UnNumber.LITHIUM_VEHICLE && !alone) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(
                un == null
                        ? ShippingFinding.UN_NUMBER_NOT_LISTED
                        : alone
                                ? ShippingFinding.BATTERY_ALONE_AS_WITH_EQUIPMENT
                                : ShippingFinding.UN_NUMBER_OF_VEHICLES,
                dangerous.un(),
                "un",
                dangerous.un(),
                "count",
                dangerous.crates().size(),
                "crates",
                NumberFormats.numbers(dangerous.crates()),
                "alone",
                UnNumber.LITHIUM_ION.un()));
    }

    private static Optional<Finding> incomplete(Goods goods) {
        Transport transport = goods.transport();
        return transport == null
                ? Optional.empty()
                : UnNumber.of(transport.un()).flatMap(un -> incomplete(goods, un, transport));
    }

    private static Optional<Finding> incomplete(Goods goods, UnNumber un, Transport transport) {
        if (un.lithium() && transport.wattHours() == null) {
            return Optional.of(Finding.of(
                    ShippingFinding.BATTERY_ENERGY_NOT_KNOWN, goods.name(), "goods", goods.says(), "un", un.un()));
        }
        String told = transport.hazardClass();
        return told == null || told.equals(un.hazardClass())
                ? Optional.empty()
                : Optional.of(Finding.of(
                        ShippingFinding.CLASS_AGAINST_UN_NUMBER,
                        goods.name(),
                        "goods",
                        goods.says(),
                        "told",
                        told,
                        "un",
                        un.un(),
                        "class",
                        un.hazardClass()));
    }

    /** What the exemption by quantity (ADR 1.1.3.6) comes to, over all that goes in the vehicle. */
    private static Finding points(Consignment together) {
        RoadPoints points = together.points();
        return Finding.of(
                points.exempt()
                        ? ShippingFinding.ADR_POINTS_WITHIN_EXEMPTION
                        : ShippingFinding.ADR_POINTS_ABOVE_EXEMPTION,
                "vehicle",
                "rules",
                By.ROAD.rules(),
                "points",
                NumberFormats.number(points.points(), 1),
                "others",
                together.shipments().size() - 1,
                "limit",
                RoadPoints.LIMIT,
                "left",
                NumberFormats.number(RoadPoints.LIMIT.subtract(points.points()).max(BigDecimal.ZERO), 1));
    }
}
