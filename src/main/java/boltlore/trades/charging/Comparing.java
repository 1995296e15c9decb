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

    /** Many posts start no lower: from memory. */
    private static final BigDecimal POST_LEAST_VOLTS = BigDecimal.valueOf(200);

    private final Bill bill;
    private final Fitted fitted;
    private final Pack pack;
    private final @Nullable Precharge precharge;
    private final @Nullable Export export;
    private final List<Judgement> judgements = new ArrayList<>();

    Comparing(Bill bill, Fitted fitted, Pack pack, @Nullable Precharge precharge, @Nullable Export export) {
        this.bill = bill;
        this.fitted = fitted;
        this.pack = pack;
        this.precharge = precharge;
        this.export = export;
    }

    List<Judgement> all() {
        modules();
        charger(fitted.charger());
        inlet(fitted.inlet());
        precharge(fitted.resistor());
        export();
        return List.copyOf(judgements);
    }

    private void modules() {
        BigDecimal inKit = bill.quantities().getOrDefault(pack.module(), BigDecimal.ZERO);
        boolean agrees = inKit.compareTo(BigDecimal.valueOf(pack.modules())) == 0;
        judge(
                "Battery",
                agrees,
                "The kit has " + Figures.number(inKit, 0) + " of " + pack.module() + ", the pack " + pack.modules()
                        + ": "
                        + pack.inSeries() + " in series and " + pack.inParallel() + " side by side give "
                        + Figures.volts(pack.nominalVolts()) + ".");
    }

    private void charger(@Nullable OnBoardCharger charger) {
        if (charger != null) {
            boolean suits = pack.lowestVolts().compareTo(charger.lowestVolts()) >= 0
                    && pack.highestVolts().compareTo(charger.highestVolts()) <= 0;
            judge(
                    "Charger",
                    suits,
                    "The charger feeds " + from(charger.lowestVolts(), charger.highestVolts()) + ", the pack goes "
                            + from(pack.lowestVolts(), pack.highestVolts()) + ".");
            chargeCurrent(charger, bill.resolved().choices().facts(Role.CHARGER).kw());
        }
    }

    /** Direct current at the empty pack, where it is largest. */
    private void chargeCurrent(OnBoardCharger charger, @Nullable BigDecimal ratedKw) {
        if (ratedKw != null) {
            BigDecimal amps = ratedKw.movePointRight(1)
                    .multiply(charger.efficiencyPercent())
                    .divide(pack.lowestVolts(), MathContext.DECIMAL128);
            judge(
                    "Charger",
                    amps.compareTo(pack.chargeAmps()) <= 0,
                    "The charger gives up to " + Figures.amps(amps) + " to the empty pack, which takes "
                            + Figures.amps(pack.chargeAmps()) + ".");
        }
    }

    private static String from(BigDecimal lowest, BigDecimal highest) {
        return "from " + Figures.number(lowest, 1) + " to " + Figures.volts(highest);
    }

    private void inlet(@Nullable InletWiring inlet) {
        if (inlet != null && inlet.direct() != null) {
            BigDecimal volts = inlet.direct().volts();
            judge(
                    "Inlet",
                    pack.highestVolts().compareTo(volts) <= 0,
                    "The pack's highest voltage of " + Figures.volts(pack.highestVolts()) + " on an inlet for "
                            + Figures.volts(volts) + ".");
            posts();
        }
    }

    private void posts() {
        judgements.add(Judgement.of(
                "DC posts",
                pack.lowestVolts().compareTo(POST_LEAST_VOLTS) >= 0,
                Verdict.LOOK,
                "The empty pack has " + Figures.volts(pack.lowestVolts()) + "; many DC posts give no less than "
                        + Figures.volts(POST_LEAST_VOLTS) + " (workshop's own value, check before use)."));
    }

    private void precharge(@Nullable PrechargeResistor resistor) {
        if (precharge != null && resistor != null) {
            new Agreement(bill).of(resistor).forEach(judgements::add);
            energy(precharge.joules(pack.highestVolts()), resistor.pulseJoule());
            time(precharge.secondsToGate(), resistor.afterSeconds());
        }
    }

    private void energy(BigDecimal joules, BigDecimal borne) {
        judge(
                "Precharge",
                joules.compareTo(borne) <= 0,
                "One precharge leaves " + Figures.number(joules, 1) + " J in a resistor for " + Figures.number(borne, 0)
                        + " J a pulse.");
    }

    private void time(BigDecimal seconds, BigDecimal told) {
        judge(
                "Contactor",
                seconds.compareTo(told) <= 0,
                "95 % is reached after " + Figures.number(seconds, 3) + " s, and the contactor is told to close after "
                        + Figures.number(told, 3) + " s.");
    }

    private void export() {
        if (export != null) {
            judgements.add(Judgement.of(
                    "Export",
                    export.watts().compareTo(export.chargerWatts()) <= 0,
                    Verdict.LOOK,
                    "The outlet is rated for " + Figures.number(export.watts(), 0) + " W, the charger feeds out "
                            + Figures.number(export.chargerWatts(), 0) + " W at most."));
        }
    }

    private void judge(String about, boolean good, String says) {
        judgements.add(Judgement.of(about, good, Verdict.TOO_MUCH, says));
    }
}
