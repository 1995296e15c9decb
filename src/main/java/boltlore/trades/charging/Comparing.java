package boltlore.trades.charging;

import boltlore.bill.Bill;
import boltlore.catalogue.DirectLimit;
import boltlore.catalogue.ElectricLimits;
import boltlore.catalogue.OnBoardCharger;
import boltlore.catalogue.Pack;
import boltlore.catalogue.PrechargeResistor;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Compares pack, charger, inlet, precharge and outlet with their limits. */
final class Comparing {

    /** Many DC chargers start no lower: workshop's own value. */
    private static final BigDecimal DC_CHARGER_LEAST_VOLTS = BigDecimal.valueOf(200);

    private final @Nullable Bill bill;
    private final @Nullable BigDecimal chargerKw;
    private final Fitted fitted;
    private final @Nullable ElectricLimits limits;
    private final Pack pack;
    private final @Nullable Precharge precharge;
    private final @Nullable Export export;
    private final List<Comparison> comparisons = new ArrayList<>();

    /**
     * What is to be compared.
     *
     * @param bill of the kit, or null where orders are asked about and not a kit, so that what parts are in it is left out
     * @param chargerKw rated power of the chosen charger, or null where it is not known
     */
    Comparing(
            @Nullable Bill bill,
            @Nullable BigDecimal chargerKw,
            Fitted fitted,
            @Nullable ElectricLimits limits,
            Pack pack,
            @Nullable Precharge precharge,
            @Nullable Export export) {
        this.bill = bill;
        this.chargerKw = chargerKw;
        this.fitted = fitted;
        this.limits = limits;
        this.pack = pack;
        this.precharge = precharge;
        this.export = export;
    }

    List<Comparison> all() {
        if (bill != null) {
            modules(bill);
        }
        charger(fitted.charger());
        inlet(fitted.direct());
        two(fitted);
        precharge(fitted.resistor());
        yCapacitors();
        export();
        return List.copyOf(comparisons);
    }

    private void modules(Bill of) {
        BigDecimal inKit = of.quantities().getOrDefault(pack.module(), BigDecimal.ZERO);
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
            chargeCurrent(charger, chargerKw);
        }
    }

    /** Direct current at the empty pack, where it is largest. */
    private void chargeCurrent(OnBoardCharger charger, @Nullable BigDecimal ratedKw) {
        if (ratedKw != null) {
            BigDecimal amps = chargeAmps(charger, ratedKw, pack);
            atMost("Charger", amps, pack.chargeAmps(), ChargingFinding.CHARGE_CURRENT_ABOVE_PACK, "amps", "pack");
        }
    }

    /** Kilowatts × percent / V, with the tens that both units leave: I = P η / U. */
    static BigDecimal chargeAmps(OnBoardCharger charger, BigDecimal ratedKw, Pack pack) {
        return ratedKw.movePointRight(1)
                .multiply(charger.efficiencyPercent())
                .divide(pack.lowestVolts(), MathContext.DECIMAL128);
    }

    /** Two inlets that pass direct current lie on one network: which of them a post feeds is for somebody to look at. */
    private void two(Fitted parts) {
        if (parts.apart() != null && parts.inlet() != null && parts.inlet().direct() != null) {
            comparisons.add(Comparison.broken(
                    "DC inlet",
                    ChargingFinding.TWO_DIRECT_INLETS,
                    "inlet",
                    NumberFormats.amps(parts.inlet().direct().amps()),
                    "dc",
                    NumberFormats.amps(parts.apart().amps())));
        }
    }

    private void inlet(@Nullable DirectLimit inlet) {
        if (inlet != null) {
            BigDecimal volts = inlet.volts();
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
            if (bill != null) {
                new Agreement(bill).of(resistor).forEach(comparisons::add);
            }
            BigDecimal joules = precharge.joules(pack.highestVolts());
            atMost("Precharge", joules, resistor.pulseJoule(), ChargingFinding.PRECHARGE_ENERGY, "joules", "rated");
            BigDecimal abort = resistor.abortAfterSeconds();
            compare(
                    "Contactor",
                    precharge.secondsToGate().compareTo(abort) <= 0,
                    ChargingFinding.PRECHARGE_ABORTED,
                    "seconds",
                    NumberFormats.rounded(precharge.secondsToGate(), 3),
                    "abort",
                    NumberFormats.rounded(abort, 3));
            shorted(precharge, resistor);
        }
    }

    private void shorted(Precharge through, PrechargeResistor resistor) {
        BigDecimal joules = through.shortedJoules(pack.highestVolts(), resistor.abortAfterSeconds());
        compare(
                "Shorted link",
                joules.compareTo(resistor.pulseJoule()) <= 0,
                ChargingFinding.PRECHARGE_SHORTED,
                "joules",
                NumberFormats.rounded(joules, 0),
                "rated",
                NumberFormats.rounded(resistor.pulseJoule(), 0),
                "abort",
                NumberFormats.rounded(resistor.abortAfterSeconds(), 3),
                "needed",
                new BigDecimal(through.longestSecondsShorted(pack.highestVolts(), resistor.pulseJoule())
                        .setScale(3, RoundingMode.DOWN)
                        .toPlainString()));
    }

    private void yCapacitors() {
        if (limits != null && limits.yJoule() != null) {
            Precharge.YCapacitors y = new Precharge.YCapacitors(fitted.capacitors());
            BigDecimal joules = y.joules(pack.highestVolts());
            compare(
                    "Y capacitors",
                    joules.compareTo(limits.yJoule()) <= 0,
                    ChargingFinding.Y_ENERGY,
                    "nanofarad",
                    NumberFormats.rounded(y.nanofarad(), 0),
                    "volts",
                    NumberFormats.rounded(pack.highestVolts(), 1),
                    "joules",
                    NumberFormats.rounded(joules, 3),
                    "most",
                    NumberFormats.rounded(limits.yJoule(), 3),
                    "source",
                    limits.source());
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
