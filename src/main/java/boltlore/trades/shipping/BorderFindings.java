package boltlore.trades.shipping;

import boltlore.catalogue.RatedMotor;
import boltlore.catalogue.Shipping;
import boltlore.catalogue.Wood;
import boltlore.measure.Digits;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What borders ask for: treated wood, customs codes, origins. */
final class BorderFindings {

    private static final String WOOD = "Wood";
    private static final String CUSTOMS = "Customs";

    private final Shipment shipment;
    private final Shipping shipping;
    private final List<ShipFinding> findings = new ArrayList<>();

    private BorderFindings(Shipment shipment) {
        this.shipment = shipment;
        this.shipping = shipment.shipping();
    }

    static List<ShipFinding> of(Shipment shipment) {
        BorderFindings found = new BorderFindings(shipment);
        if (shipment.route().to().isEmpty()) {
            found.look(CUSTOMS, "Nobody has said where the crates go (--to): a border is taken to be crossed.");
        }
        if (shipment.route().crossesBorder(found.shipping)) {
            found.wood();
        }
        if (shipment.route().leavesUnion(found.shipping)) {
            found.uncoded();
        }
        found.motors();
        return found.findings;
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
        if (!bare.isEmpty()) {
            findings.add(ShipFinding.stops(WOOD, bare(bare)));
        } else if (!solid.isEmpty()) {
            look(WOOD, marked(solid));
        }
    }

    private static String bare(List<Crate> bare) {
        return "The solid wood of " + Told.crates(bare)
                + " bears no mark of treatment (ISPM 15: 56 °C in the core for 30"
                + " minutes) and would be refused at the border.";
    }

    private static String marked(List<Crate> solid) {
        String marks =
                solid.stream().map(crate -> crate.type().woodMark()).distinct().collect(Collectors.joining(", "));
        return "Look for the mark " + marks + " on two sides of " + Told.crates(solid)
                + ": solid wood is heat-treated (ISPM 15). Plywood is exempt.";
    }

    private void uncoded() {
        List<String> names = shipment.customs().stream()
                .filter(line -> line.hs().isEmpty() || line.origin().isEmpty())
                .flatMap(line -> line.goods().stream())
                .map(Goods::name)
                .distinct()
                .toList();
        if (!names.isEmpty()) {
            look(CUSTOMS, "No customs code or origin is known of " + Told.some(names) + ": ask the broker.");
        }
    }

    private void motors() {
        shipment.customs().forEach(line -> line.goods().forEach(goods -> motor(goods, line.hs())));
    }

    private void motor(Goods goods, String hs) {
        RatedMotor motor =
                goods.part() == null ? null : shipping.motors().get(goods.part().number());
        if (motor != null && !hs.isEmpty() && !Tariff.of(motor).covers(hs)) {
            String kw = Digits.plain(motor.kw());
            String usual = Tariff.of(motor).code();
            look(
                    CUSTOMS,
                    goods.says() + " has customs code " + hs + "; a motor of " + kw + " kW comes under " + usual + ".");
        }
    }

    private void look(String about, String says) {
        findings.add(ShipFinding.look(about, says));
    }
}
