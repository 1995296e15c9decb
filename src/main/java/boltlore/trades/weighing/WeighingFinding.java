package boltlore.trades.weighing;

import static boltlore.findings.Severity.CHECK;
import static boltlore.findings.Severity.NOTE;
import static boltlore.findings.Severity.STOP;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** What the weights of a converted vehicle may show. */
public enum WeighingFinding implements Kind {
    AXLE_LIFTS_OFF(STOP),
    WEIGHT_ABOVE_LIMIT(STOP),
    MASS_ABOVE_MARKET_LIMIT(STOP),
    MASS_NEAR_MARKET_LIMIT(CHECK),
    MARKET_CONDITION_NOT_MET(CHECK),
    FRONT_SHARE_LOW(CHECK),
    STANDING_AXLE_GAINS_NOTHING(CHECK),
    LIFT_NOT_PLAUSIBLE(CHECK),
    LEVEL_LOAD_DIFFERS(CHECK),
    HEIGHT_NOT_PLAUSIBLE(CHECK),
    STATION_NOT_KNOWN(CHECK),
    REMOVED_NOT_KNOWN(CHECK),
    LOADS_NOT_KNOWN(CHECK),
    EXTRA_NOT_WEIGHED(CHECK),
    /** A note: the market's data has no such rule, and where it has one, REMOVED_NOT_KNOWN says what is missing. */
    MASS_LIMIT_NOT_KNOWN(NOTE),
    FEW_LIFTS(NOTE),
    CENTRE_HEIGHT_NOT_KNOWN(NOTE);

    private final Severity severity;

    WeighingFinding(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String room() {
        return "axle-loads";
    }
}
