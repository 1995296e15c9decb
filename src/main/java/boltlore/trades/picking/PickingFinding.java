package boltlore.trades.picking;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** What a picking list may show of its order. */
public enum PickingFinding implements Kind {
    LINES_ON_HOLD(false),
    BIN_OFF_THE_WALK(true),
    EXTRA_WITHOUT_BIN(true);

    private final boolean waivable;

    PickingFinding(boolean waivable) {
        this.waivable = waivable;
    }

    @Override
    public Severity severity() {
        return Severity.CHECK;
    }

    @Override
    public String room() {
        return "picking";
    }

    /** The order itself decides on its brackets; a waiver here would leave the lines unpicked all the same. */
    @Override
    public boolean waivable() {
        return waivable;
    }
}
