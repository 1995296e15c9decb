package boltlore.trades.shipping;

import boltlore.catalogue.Customs;
import boltlore.catalogue.ShippedBattery;
import boltlore.findings.Finding;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What lithium batteries in crates ask for: packaging, charge, test summary, adviser, passport. */
final class BatteryFindings {

    private static final String ALL = "lithium batteries";

    private final Shipment shipment;
    private final boolean byAir;
    private final List<Finding> findings = new ArrayList<>();

    private BatteryFindings(Shipment shipment) {
        this.shipment = shipment;
        this.byAir = shipment.route().by() == By.AIR;
    }

    static List<Finding> find(Shipment shipment) {
        BatteryFindings found = new BatteryFindings(shipment);
        List<DangerousGoods> lithium =
                shipment.dangerous().stream().filter(DangerousGoods::lithium).toList();
        if (!lithium.isEmpty()) {
            lithium.forEach(found::goods);
            if (shipment.shipping().consignor().adviser().isEmpty()) {
                found.add(ShippingFinding.ADVISER_NOT_NAMED, ALL);
            }
            found.passport();
        }
        return found.findings;
    }

    private void add(ShippingFinding kind, String subject, Object... named) {
        findings.add(Finding.of(kind, subject, named));
    }

    private void goods(DangerousGoods goods) {
        goods.crates().forEach(this::crate);
        goods.packed().map(Packed::goods).distinct().forEach(this::battery);
    }

    private void crate(Crate crate) {
        boolean strong = crate.packed().stream().map(Packed::goods).allMatch(this::strong);
        String subject = "crate " + crate.number();
        if (crate.type().unMark().isEmpty() && (byAir || !strong)) {
            add(
                    strong ? ShippingFinding.NO_UN_MARK_BY_AIR : ShippingFinding.NO_UN_MARK,
                    subject,
                    "rules",
                    shipment.route().by().rules(),
                    "crate",
                    crate.number(),
                    "kind",
                    crate.type().name(),
                    "least",
                    PackingInstruction.HEAVY_KG);
        }
        if (byAir && AirRules.needsApproval(crate.netKg())) {
            add(
                    ShippingFinding.PACKAGE_TOO_HEAVY_BY_AIR,
                    subject,
                    "rules",
                    By.AIR.rules(),
                    "crate",
                    crate.number(),
                    "most",
                    AirRules.MOST_NET_KG,
                    "holds",
                    NumberFormats.number(crate.netKg(), 1));
        }
    }

    private boolean strong(Goods goods) {
        BigDecimal each = goods.eachKg();
        return each != null && PackingInstruction.strong(each, shipment.known(goods));
    }

    private void battery(Goods goods) {
        ShippedBattery battery = shipment.known(goods);
        tested(goods, battery);
        if (byAir) {
            charge(goods, battery.chargePercent());
        }
        Customs customs = goods.part() == null ? null : goods.part().customs();
        if (customs != null && !Tariff.LITHIUM_ION.covers(customs.hs())) {
            String usual = Tariff.LITHIUM_ION.code();
            add(
                    ShippingFinding.CUSTOMS_CODE_OF_BATTERY,
                    goods.name(),
                    "goods",
                    goods.says(),
                    "hs",
                    customs.hs(),
                    "usual",
                    usual);
        }
    }

    /** Tested by UN 38.3, or of a run so small that the rules let it travel untested. */
    private void tested(Goods goods, ShippedBattery battery) {
        String rules = shipment.route().by().rules();
        if (battery.smallRun()) {
            ShippingFinding kind = byAir ? ShippingFinding.SMALL_RUN_BY_AIR : ShippingFinding.SMALL_RUN_UNTESTED;
            add(kind, goods.name(), "goods", goods.says(), "rules", rules);
        } else if (battery.testSummary().isEmpty()) {
            add(
                    ShippingFinding.TEST_SUMMARY_NOT_KEPT,
                    goods.name(),
                    "goods",
                    goods.says(),
                    "extra",
                    goods.part() == null ? 1 : 0,
                    "rules",
                    rules);
        }
    }

    private void charge(Goods goods, @Nullable BigDecimal percent) {
        BigDecimal most = AirRules.MOST_CHARGE_PERCENT;
        if (percent == null) {
            add(
                    ShippingFinding.CHARGE_NOT_KNOWN_BY_AIR,
                    goods.name(),
                    "rules",
                    By.AIR.rules(),
                    "goods",
                    goods.says(),
                    "most",
                    most);
        } else if (!AirRules.chargeAllowed(percent)) {
            add(
                    ShippingFinding.CHARGE_TOO_HIGH_BY_AIR,
                    goods.name(),
                    "rules",
                    By.AIR.rules(),
                    "goods",
                    goods.says(),
                    "percent",
                    NumberFormats.number(percent, 1),
                    "most",
                    most);
        }
    }

    private void passport() {
        LocalDate due = shipment.order().due();
        String to = shipment.route().destination();
        boolean union = to.isEmpty() || shipment.shipping().customsUnion().contains(to);
        if (union && (due == null || Papers.passportDue(due))) {
            add(ShippingFinding.BATTERY_PASSPORT, ALL);
        }
    }
}
