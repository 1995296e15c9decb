package boltlore.trades.shipping;

import boltlore.catalogue.RatedMotor;
import boltlore.catalogue.Shipping;
import boltlore.catalogue.Wood;
import boltlore.findings.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What borders ask for: treated wood, customs codes, origins, values. */
final class BorderFindings {

    private static final String CUSTOMS = "customs lines";

    private final Shipment shipment;
    private final Shipping shipping;
    private final List<Finding> findings = new ArrayList<>();

    private BorderFindings(Shipment shipment) {
        this.shipment = shipment;
        this.shipping = shipment.shipping();
    }

    static List<Finding> find(Shipment shipment) {
        BorderFindings found = new BorderFindings(shipment);
        if (shipment.route().to().isEmpty()) {
            found.add(
                    shipment.route().leavesNow()
                            ? ShippingFinding.DESTINATION_NOT_GIVEN
                            : ShippingFinding.DESTINATION_NOT_GIVEN_YET,
                    "destination");
        }
        if (shipment.overseas()) {
            found.add(
                    ShippingFinding.NOT_REACHED_BY_ROAD,
                    "destination",
                    "to",
                    shipment.route().destination(),
                    "from",
                    found.shipping.consignor().country(),
                    "order",
                    shipment.order().name());
        }
        if (shipment.route().crossesBorder(found.shipping)) {
            found.wood();
        }
        if (shipment.route().leavesUnion(found.shipping)) {
            found.uncoded();
            if (shipment.price() == null) {
                found.add(ShippingFinding.CUSTOMS_VALUES_NOT_KNOWN, CUSTOMS);
            }
        }
        shipment.customs().forEach(line -> line.goods().forEach(goods -> found.motor(goods, line.hs())));
        return found.findings;
    }

    private void add(ShippingFinding kind, String subject, Object... named) {
        findings.add(Finding.of(kind, subject, named));
    }

    /**
     * Solid wood that crosses borders is heated to 56 °C in its core for at least 30 minutes and marked on two sides (ISPM
     * 15); plywood and wood of 6 mm or less are exempt.
     */
    private void wood() {
        List<Crate> solid = shipment.crates().stream()
                .filter(crate -> crate.type().wood() == Wood.SOLID)
                .toList();
        List<Crate> bare = solid.stream()
                .filter(crate -> crate.type().woodMark().isEmpty())
                .toList();
        String marks =
                solid.stream().map(crate -> crate.type().woodMark()).distinct().collect(Collectors.joining(", "));
        if (!bare.isEmpty()) {
            wood(ShippingFinding.WOOD_WITHOUT_MARK, bare, marks);
        } else if (!solid.isEmpty()) {
            wood(ShippingFinding.WOOD_MARK_TO_LOOK_FOR, solid, marks);
        }
    }

    private void wood(ShippingFinding kind, List<Crate> crates, String marks) {
        add(kind, "wood", "marks", marks, "count", crates.size(), "crates", NumberFormats.numbers(crates));
    }

    private void uncoded() {
        List<String> names = shipment.customs().stream()
                .filter(line -> line.hs().isEmpty() || line.origin().isEmpty())
                .flatMap(line -> line.goods().stream())
                .map(Goods::name)
                .distinct()
                .toList();
        if (!names.isEmpty()) {
            add(
                    ShippingFinding.CUSTOMS_CODE_NOT_KNOWN,
                    CUSTOMS,
                    "parts",
                    NumberFormats.first(names),
                    "more",
                    NumberFormats.more(names));
        }
    }

    private void motor(Goods goods, String hs) {
        RatedMotor motor =
                goods.part() == null ? null : shipping.motors().get(goods.part().number());
        if (motor != null && !hs.isEmpty() && !Tariff.of(motor).covers(hs)) {
            add(
                    ShippingFinding.CUSTOMS_CODE_OF_MOTOR,
                    goods.name(),
                    "goods",
                    goods.says(),
                    "hs",
                    hs,
                    "kw",
                    NumberFormats.number(motor.kw(), 3),
                    "usual",
                    Tariff.of(motor).code());
        }
    }
}
