package boltlore.trades.mounting;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** Where a mount would break, which stops the order, or has a weld that no strength is worked out for. */
public enum MountingFinding implements Kind {
    /** {mount}, {shock}, {force}, {bears}. */
    MOUNT_BOLTS_TOO_WEAK,
    /** {mount}, {shock}, {force}, {bears}, {throat}. */
    MOUNT_WELD_TOO_WEAK,
    /** {mount}, {has}, {least}. */
    MOUNT_WELD_THIN;

    @Override
    public Severity severity() {
        return this == MOUNT_WELD_THIN ? Severity.CHECK : Severity.STOP;
    }

    @Override
    public String room() {
        return "mounting";
    }
}
