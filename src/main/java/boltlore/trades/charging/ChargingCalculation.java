package boltlore.trades.charging;

import boltlore.bill.Bill;
import boltlore.catalogue.Branch;
import boltlore.catalogue.Buses;
import boltlore.catalogue.Capacitor;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Fuse;
import boltlore.catalogue.Pack;
import boltlore.catalogue.PowerCable;
import boltlore.catalogue.PrechargeResistor;
import boltlore.choices.Choices;
import boltlore.findings.Finding;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Works out charging and high voltage of one order's kit. */
public final class ChargingCalculation {

    private final Bill bill;
    private final Electrics electrics;
    private final Choices choices;
    private final Fitted fitted;
    private final @Nullable Mains mains;
    private final @Nullable CableCode cable;

    private ChargingCalculation(Electrics electrics, Bill bill, @Nullable Mains asked, @Nullable CableCode cable) {
        this.bill = bill;
        this.choices = bill.resolved().choices();
        this.electrics = electrics;
        this.fitted = Fitted.of(electrics, bill);
        this.mains = asked != null ? asked : Mains.atHome(choices).orElse(null);
        this.cable = cable;
    }

    /**
     * At the customer's own supply, or at another that is asked about.
     *
     * @param electrics of the order's family
     * @param asked null for the supply that the order has chosen
     * @param cable the code of the loose cable in use, or null to try all of them
     */
    public static Charging calculate(Electrics electrics, Bill bill, @Nullable Mains asked, @Nullable CableCode cable) {
        return new ChargingCalculation(electrics, bill, asked, cable).charging();
    }

    private Charging charging() {
        Pack pack = fitted.pack();
        Precharge precharge = precharge();
        Export export = Export.of(choices, fitted.outlet()).orElse(null);
        List<Comparison> others = pack == null ? List.of() : new Comparing(bill, fitted, pack, precharge, export).all();
        return new Charging(
                electrics,
                bill,
                fitted,
                mains,
                new AcWays(choices, fitted, mains, cable).all(),
                DcWay.find(fitted).orElse(null),
                export,
                precharge,
                isolationOhm(),
                pack == null ? List.of() : branches(pack),
                others,
                missing());
    }

    private @Nullable Precharge precharge() {
        PrechargeResistor resistor = fitted.resistor();
        BigDecimal microfarad =
                fitted.capacitors().stream().map(Capacitor::microfarad).reduce(BigDecimal.ZERO, BigDecimal::add);
        return resistor == null || microfarad.signum() == 0 ? null : new Precharge(resistor.ohm(), microfarad);
    }

    private @Nullable BigDecimal isolationOhm() {
        Buses buses = electrics.buses();
        Pack pack = fitted.pack();
        return buses == null || pack == null ? null : Isolation.limitOhm(buses, pack.highestVolts());
    }

    private List<BranchCheck> branches(Pack pack) {
        return fitted.branches().stream()
                .flatMap(branch -> cable(branch.cable().text()).map(found -> check(branch, found, pack)).stream())
                .toList();
    }

    private BranchCheck check(Branch branch, PowerCable found, Pack pack) {
        Fuse fuse = fuse(branch.fuse());
        List<Comparison> disagree = new Agreement(bill).of(branch, fuse).toList();
        return BranchChecker.check(branch, fuse, found, pack).with(disagree);
    }

    private Optional<PowerCable> cable(String part) {
        return electrics.cables().stream()
                .filter(each -> each.part().text().equals(part))
                .findFirst();
    }

    private @Nullable Fuse fuse(@Nullable String name) {
        return electrics.fuses().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElse(null);
    }

    private List<Finding> missing() {
        List<Finding> missing = new ArrayList<>(fitted.missing());
        if (electrics.buses() == null) {
            missing.add(Finding.of(ChargingFinding.BUSES_NOT_GIVEN, "buses"));
        }
        if (fitted.capacitors().isEmpty()) {
            missing.add(Finding.of(ChargingFinding.DC_LINK_NOT_GIVEN, "DC link"));
        }
        if (mains == null) {
            missing.add(Finding.of(ChargingFinding.SUPPLY_NOT_KNOWN, "supply"));
        }
        return List.copyOf(missing);
    }
}
