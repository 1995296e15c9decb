package boltlore.trades.braking;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** What a licensed brake workshop must look at; each rests on estimates, so it is checked, and may be waived. */
public enum BrakingFinding implements Kind {
    /** The vehicle could spin: {case}, {rate}, {most}. */
    REAR_AXLE_LOCKS_FIRST,
    /** {helped}, {wanted}, {least}. */
    VACUUM_RESERVE_SHORT;

    @Override
    public Severity severity() {
        return Severity.CHECK;
    }

    @Override
    public String room() {
        return "braking";
    }
}
