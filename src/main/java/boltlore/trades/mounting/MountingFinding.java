package boltlore.trades.mounting;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** Where a mount would break; each stops the order. */
public enum MountingFinding implements Kind {
    /** {mount}, {shock}, {force}, {bears}. */
    MOUNT_BOLTS_TOO_WEAK,
    /** {mount}, {shock}, {force}, {bears}, {throat}. */
    MOUNT_WELD_TOO_WEAK;

    @Override
    public Severity severity() {
        return Severity.STOP;
    }

    @Override
    public String room() {
        return "mounting";
    }
}
