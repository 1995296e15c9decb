package boltlore.trades.charging;

import boltlore.bill.Bill;
import boltlore.catalogue.Buses;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Facts;
import boltlore.catalogue.Feeds;
import boltlore.catalogue.OnBoardCharger;
import boltlore.catalogue.Pack;
import boltlore.catalogue.Role;
import boltlore.choices.Choices;
import boltlore.findings.Finding;
import boltlore.power.ChosenPower;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
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
        Precharge precharge = Precharge.of(fitted.resistor(), fitted.capacitors());
        Export export = Export.of(choices, fitted.outlet()).orElse(null);
        List<Comparison> others =
                new ArrayList<>(new Agreement(bill).of(fitted.inlet()).toList());
        if (pack != null) {
            BigDecimal chargerKw = choices.facts(Role.CHARGER).kw();
            others.addAll(new Comparing(bill, chargerKw, fitted, electrics.limits(), pack, precharge, export).all());
        }
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
                branches(pack),
                List.copyOf(others),
                missing());
    }

    private @Nullable BigDecimal isolationOhm() {
        Buses buses = electrics.buses();
        Pack pack = fitted.pack();
        return buses == null || pack == null ? null : Isolation.limitOhm(buses, pack.highestVolts());
    }

    private List<BranchCheck> branches(@Nullable Pack pack) {
        BranchLoads loads = new BranchLoads(electrics, fitted.branches(), pack, chosen());
        Agreement agreement = new Agreement(bill);
        return fitted.branches().stream()
                .flatMap(branch -> electrics
                        .cable(branch.cable())
                        .map(cable -> BranchChecker.check(
                                branch,
                                electrics,
                                cable,
                                pack,
                                loads.of(branch).orElse(null),
                                agreement.lengthMm(branch)))
                        .map(check -> check.with(agreement.of(check).toList()))
                        .stream())
                .toList();
    }

    /** The currents that the order's choices lead to. */
    private Map<Feeds.Chosen, BigDecimal> chosen() {
        Map<Feeds.Chosen, BigDecimal> chosen = new EnumMap<>(Feeds.Chosen.class);
        Facts charger = choices.facts(Role.CHARGER);
        Facts inlet = choices.facts(Role.INLET);
        Pack pack = fitted.pack();
        OnBoardCharger onBoard = fitted.charger();
        if (pack != null && onBoard != null && charger.kw() != null) {
            chosen.put(Feeds.Chosen.CHARGER_OUTPUT, Comparing.chargeAmps(onBoard, charger.kw(), pack));
        }
        if (charger.amps() != null && inlet.amps() != null) {
            chosen.put(Feeds.Chosen.CHARGER_INPUT, charger.amps().min(inlet.amps()));
        }
        DcWay.find(fitted).ifPresent(way -> chosen.put(Feeds.Chosen.DIRECT_CHARGING, way.amps()));
        ChosenPower.outlet(choices).ifPresent(power -> chosen.put(Feeds.Chosen.OUTLET, power.amps()));
        return chosen;
    }

    private List<Finding> missing() {
        List<Finding> missing = new ArrayList<>(fitted.missing());
        electrics.leads().stream()
                .filter(lead -> bill.quantities().containsKey(lead.part()))
                .flatMap(lead -> LeadWires.judge(lead, choices.facts(Role.INLET), choices.facts(Role.CHARGER)).stream())
                .forEach(missing::add);
        if (electrics.buses() == null) {
            missing.add(Finding.of(ChargingFinding.BUSES_NOT_GIVEN, "buses"));
        }
        if (fitted.capacitors().isEmpty()) {
            missing.add(Finding.of(ChargingFinding.DC_LINK_NOT_GIVEN, "DC link"));
        }
        if (!fitted.capacitors().isEmpty() && new Precharge.YCapacitors(fitted.capacitors()).someNotGiven()) {
            missing.add(Finding.of(ChargingFinding.Y_NOT_GIVEN, "Y capacitors"));
        }
        if (mains == null) {
            missing.add(Finding.of(ChargingFinding.SUPPLY_NOT_KNOWN, "supply"));
        }
        return List.copyOf(missing);
    }
}
