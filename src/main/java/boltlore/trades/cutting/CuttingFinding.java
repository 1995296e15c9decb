package boltlore.trades.cutting;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** What a cutting list may show of its orders. */
public enum CuttingFinding implements Kind {
    /** What is cut to a length that nobody measured fits no vehicle but by luck. */
    DIMENSION_NOT_MEASURED(Severity.STOP),
    PART_NOT_TO_BE_CUT(Severity.CHECK),
    CHEAPER_CUTTING_POSSIBLE(Severity.NOTE);

    private final Severity severity;

    CuttingFinding(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String room() {
        return "cut";
    }

    /** The order itself decides on its brackets; a waiver here would leave the part uncut all the same. */
    @Override
    public boolean waivable() {
        return false;
    }
}
