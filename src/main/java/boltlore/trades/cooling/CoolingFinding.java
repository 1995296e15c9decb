package boltlore.trades.cooling;

import static boltlore.findings.Severity.CHECK;
import static boltlore.findings.Severity.STOP;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** What a coolant circuit may lack. */
public enum CoolingFinding implements Kind {
    /** The pump lifts less than the circuit takes at the least flow: {circuit}, {what}, {least}, {flow}, {takes}, {lifts}. */
    COOLANT_FLOW_LOW(STOP),

    /** {circuit} flows through {part} at {position}, whose pressure drop is not counted. */
    HOSE_NOT_COUNTED(CHECK),

    /** {circuit}: nobody says which flow anything in it needs. */
    LEAST_FLOW_NOT_GIVEN(CHECK),

    /** The circuit is reckoned with {bore} mm at {position}, where {part} has ports of {ports} mm. */
    HOSE_BORE_DIFFERS(CHECK),

    /** {circuit}: fittings {fittings} are reckoned with {bore} mm, and the circuit's hoses have ports of {ports} mm. */
    FITTING_BORE_DIFFERS(CHECK),

    /** {circuit} is reckoned with the curve of {part}, and {fitted} stands at {position}. */
    PUMP_OF_OTHER_CURVE(STOP),

    /** {circuit} is reckoned with figures of {part}, and {fitted} stands at {position}. */
    FIGURES_OF_OTHER_PART(STOP),

    /** {circuit}: nobody says which pump has the curve. */
    PUMP_NOT_NAMED(CHECK),

    /** {circuit} holds {holds} l, and the kit mixes {mixed} l for it. */
    COOLANT_TOO_LITTLE(CHECK),

    /** {circuit} holds {holds} l, and the kit mixes {mixed} l for it, more than {times} times as much. */
    COOLANT_TOO_MUCH(CHECK),

    /** {circuit} is reckoned with {reckoned} per cent of concentrate, and the kit's is mixed to {mixed} per cent. */
    COOLANT_MIX_DIFFERS(CHECK),

    /** {circuit}: nobody says what it holds or which coolant fills it. */
    COOLANT_AMOUNT_NOT_JUDGED(Severity.NOTE),

    /** {circuit}: {heat} W stand in the data, and nothing says what makes them. */
    HEAT_NOT_DERIVED(CHECK),

    /**
     * {circuit}: {amps} A for {minutes} min, charging (way 0) or driving (1), make {heat} W in the {milliohm} mΩ of the battery:
     * {hottest}, {most}, {air}.
     */
    BATTERY_TOO_HOT(CHECK),

    /** {circuit}, {hottest}, {most}, {air}, {heat}. */
    COOLANT_TOO_HOT(CHECK);

    private final Severity severity;

    CoolingFinding(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String room() {
        return "cooling";
    }
}
