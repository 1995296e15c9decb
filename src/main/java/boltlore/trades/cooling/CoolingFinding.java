package boltlore.trades.cooling;

import static boltlore.findings.Severity.CHECK;
import static boltlore.findings.Severity.STOP;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** What a coolant circuit may lack. */
public enum CoolingFinding implements Kind {
    /** {circuit}, {what}, {least}, {flow}. */
    COOLANT_FLOW_LOW(STOP),
    /** At the least flow the circuit takes more than the pump lifts: {circuit}, {flow}, {takes}, {lifts}. */
    PUMP_HEAD_EXCEEDED(CHECK),
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
