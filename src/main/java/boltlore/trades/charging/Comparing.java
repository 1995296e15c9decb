package boltlore.trades.charging;

import boltlore.bill.Bill;
import boltlore.catalogue.InletWiring;
import boltlore.catalogue.OnBoardCharger;
import boltlore.catalogue.Pack;
import boltlore.catalogue.PrechargeResistor;
import boltlore.catalogue.Role;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Compares pack, charger, inlet, precharge and outlet with their limits. */
final class Comparing {

    /** Many DC chargers start no lower: workshop's own value. */
    private static final BigDecimal DC_CHARGER_LEAST_VOLTS = BigDecimal.valueOf(200);

    private final Bill bill;
    private final Fitted fitted;
    private final Pack pack;
    private final @Nullable Precharge precharge;
    private final @Nullable Export export;
    private final List<Comparison> comparisons = new ArrayList<>();

    Comparing(Bill bill, Fitted fitted, Pack pack, @Nullable Precharge precharge, @Nullable Export export) {
        this.bill = bill;
        this.fitted = fitted;
        this.pack = pack;
        this.precharge = precharge;
        this.export = export;
    }

    List<Comparison> all() {
        modules();
        charger(fitted.charger());
        inlet(fitted.inlet());
        precharge(fitted.resistor());
        export();
        return List.copyOf(comparisons);
    }

    private void modules() {
        BigDecimal inKit = bill.quantities().getOrDefault(pack.module(), BigDecimal.ZERO);
        compare(
                "Battery",
                inKit.compareTo(BigDecimal.valueOf(pack.modules())) == 0,
                ChargingFinding.MODULES_AGAINST_PACK,
                "kit",
                NumberFormats.rounded(inKit, 0),
                "module",
                pack.module(),
                "pack",
                pack.modules(),
                "series",
                pack.inSeries(),
                "parallel",
                pack.inParallel(),
                "volts",
                NumberFormats.rounded(pack.nominalVolts(), 1));
    }

    private void charger(@Nullable OnBoardCharger charger) {
        if (charger != null) {
            compare(
                    "Charger",
                    pack.lowestVolts().compareTo(charger.lowestVolts()) >= 0
                            && pack.highestVolts().compareTo(charger.highestVolts()) <= 0,
                    ChargingFinding.PACK_OUTSIDE_CHARGER,
                    "chargerFrom",
                    NumberFormats.rounded(charger.lowestVolts(), 1),
                    "chargerTo",
                    NumberFormats.rounded(charger.highestVolts(), 1),
                    "packFrom",
                    NumberFormats.rounded(pack.lowestVolts(), 1),
                    "packTo",
                    NumberFormats.rounded(pack.highestVolts(), 1));
            chargeCurrent(charger, bill.resolved().choices().facts(Role.CHARGER).kw());
        }
    }

    /** Direct current at the empty pack, where it is largest. */
    private void chargeCurrent(OnBoardCharger charger, @Nullable BigDecimal ratedKw) {
        if (ratedKw != null) {
            BigDecimal amps = ratedKw.movePointRight(1)
                    .multiply(charger.efficiencyPercent())
                    .divide(pack.lowestVolts(), MathContext.DECIMAL128);
            atMost("Charger", amps, pack.chargeAmps(), ChargingFinding.CHARGE_CURRENT_ABOVE_PACK, "amps", "pack");
        }
    }

    private void inlet(@Nullable InletWiring inlet) {
        if (inlet != null && inlet.direct() != null) {
            BigDecimal volts = inlet.direct().volts();
            atMost("Inlet", pack.highestVolts(), volts, ChargingFinding.PACK_ABOVE_INLET, "pack", "inlet");
            compare(
                    "DC chargers",
                    pack.lowestVolts().compareTo(DC_CHARGER_LEAST_VOLTS) >= 0,
                    ChargingFinding.PACK_BELOW_DC_CHARGERS,
                    "pack",
                    NumberFormats.rounded(pack.lowestVolts(), 1),
                    "least",
                    DC_CHARGER_LEAST_VOLTS);
        }
    }

    private void precharge(@Nullable PrechargeResistor resistor) {
        if (precharge != null && resistor != null) {
            new Agreement(bill).of(resistor).forEach(comparisons::add);
            BigDecimal joules = precharge.joules(pack.highestVolts());
            atMost("Precharge", joules, resistor.pulseJoule(), ChargingFinding.PRECHARGE_ENERGY, "joules", "rated");
            compare(
                    "Contactor",
                    precharge.secondsToGate().compareTo(resistor.afterSeconds()) <= 0,
                    ChargingFinding.CONTACTOR_TOO_SOON,
                    "seconds",
                    NumberFormats.rounded(precharge.secondsToGate(), 3),
                    "commanded",
                    NumberFormats.rounded(resistor.afterSeconds(), 3));
        }
    }

    private void export() {
        if (export != null) {
            compare(
                    "Outlet",
                    export.watts().compareTo(export.chargerWatts()) <= 0,
                    ChargingFinding.OUTLET_ABOVE_CHARGER,
                    "outlet",
                    NumberFormats.rounded(export.watts(), 0),
                    "charger",
                    NumberFormats.rounded(export.chargerWatts(), 0));
        }
    }

    private void atMost(
            String about, BigDecimal value, BigDecimal limit, ChargingFinding kind, String valueIs, String limitIs) {
        compare(
                about,
                value.compareTo(limit) <= 0,
                kind,
                valueIs,
                NumberFormats.rounded(value, 1),
                limitIs,
                NumberFormats.rounded(limit, 1));
    }

    private void compare(String about, boolean holds, ChargingFinding kind, Object... named) {
        comparisons.add(Comparison.of(about, holds, kind, named));
    }
}
