package boltlore.trades.shipping;

import static boltlore.trades.shipping.Told.kg;

import boltlore.catalogue.Consignor;
import boltlore.catalogue.Customs;
import boltlore.catalogue.ShippedBattery;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What lithium batteries in crates ask for: packaging, charge, test summary, adviser, passport. */
final class BatteryFindings {

    private static final String LITHIUM = "Lithium";

    private final Shipment shipment;
    private final boolean byAir;
    private final List<ShipFinding> findings = new ArrayList<>();

    private BatteryFindings(Shipment shipment) {
        this.shipment = shipment;
        this.byAir = shipment.route().by() == By.AIR;
    }

    static List<ShipFinding> of(Shipment shipment) {
        BatteryFindings found = new BatteryFindings(shipment);
        List<DangerousGoods> lithium =
                shipment.dangerous().stream().filter(DangerousGoods::lithium).toList();
        if (!lithium.isEmpty()) {
            lithium.forEach(found::goods);
            found.adviser();
            found.passport();
        }
        return found.findings;
    }

    private void goods(DangerousGoods goods) {
        goods.crates().forEach(this::crate);
        goods.packed().map(Packed::goods).distinct().forEach(this::battery);
    }

    private void crate(Crate crate) {
        boolean strong = crate.packed().stream().map(Packed::goods).allMatch(this::strong);
        if (crate.type().unMark().isEmpty() && !strong) {
            stops("Crate " + crate.number() + " ('" + crate.type().name()
                    + "') has no UN mark, and what is in it is not"
                    + " 12 kg or more each in a strong case: it needs approved packaging.");
        }
        if (byAir && AirRules.needsApproval(crate.netKg())) {
            String most = kg(AirRules.MOST_NET_KG) + " of batteries and holds " + kg(crate.netKg());
            stops("By air crate " + crate.number() + " may hold " + most
                    + ": it takes approval of the States concerned," + " or smaller packages.");
        }
    }

    private boolean strong(Goods goods) {
        BigDecimal each = goods.eachKg();
        return each != null && PackingInstruction.strong(each, known(goods));
    }

    private ShippedBattery known(Goods goods) {
        return Batteries.known(shipment.shipping(), goods);
    }

    private void battery(Goods goods) {
        ShippedBattery battery = known(goods);
        if (battery.testSummary().isEmpty()) {
            look(goods.says() + ": shipping.json does not say where its test summary (UN 38.3.5) is kept.");
        }
        charge(goods, battery.chargePercent());
        customs(goods);
    }

    private void customs(Goods goods) {
        Customs customs = goods.part() == null ? null : goods.part().customs();
        if (customs != null && !Tariff.LITHIUM_ION.covers(customs.hs())) {
            look(goods.says() + " has customs code " + customs.hs() + "; lithium-ion batteries come under "
                    + Tariff.LITHIUM_ION.code() + ".");
        }
    }

    private void charge(Goods goods, @Nullable BigDecimal percent) {
        if (!byAir) {
            return;
        }
        if (percent == null) {
            stops(goods.says() + ": by air its state of charge must be known and 30 % at most. Put 'chargePercent' to"
                    + " it in shipping.json.");
        } else if (!AirRules.chargeAllowed(percent)) {
            stops(goods.says() + " leaves at " + Digits.upTo(percent, 1) + " % charge; by air 30 % is the most.");
        }
    }

    private void adviser() {
        Consignor consignor = shipment.shipping().consignor();
        if (consignor.adviser().isEmpty()) {
            look("No dangerous-goods safety adviser is named in shipping.json. Who consigns or packs dangerous goods by"
                    + " road needs one, unless the risk is minimal and that is put on record.");
        }
    }

    private void passport() {
        LocalDate due = shipment.order().due();
        String to = shipment.route().destination();
        boolean union = to.isEmpty() || shipment.shipping().customsUnion().contains(to);
        if (union && (due == null || Papers.passportDue(due))) {
            look(
                    "From 18 February 2027 each battery for an electric vehicle on the EU market needs its battery passport;"
                            + " who places it on the market answers for it.");
        }
    }

    private void stops(String says) {
        findings.add(ShipFinding.stops(LITHIUM, says));
    }

    private void look(String says) {
        findings.add(ShipFinding.look(LITHIUM, says));
    }
}
