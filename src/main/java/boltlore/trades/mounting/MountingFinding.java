package boltlore.trades.mounting;

import static boltlore.findings.Severity.CHECK;
import static boltlore.findings.Severity.STOP;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/**
 * Where a mount would break, or is judged with figures that are not those of the kit. It stops the order where drive unit
 * or battery could come loose; the rest an engineer looks at.
 */
public enum MountingFinding implements Kind {
    /** {mount}, {shock}, {force}, {bears}. */
    MOUNT_BOLTS_TOO_WEAK(STOP),
    /** {mount}, {shock}, {force}, {bears}, {throat}. */
    MOUNT_WELD_TOO_WEAK(STOP),
    /** {mount}: the kit has {count} bolts {bolts}, which bear {bears} kN, and the mount is judged with {declared} kN. */
    MOUNT_BOLTS_WEAKER_IN_KIT(STOP),
    /** {mounts}: their shares come to {sum}, so that a part of the mass hangs on nothing. */
    MOUNT_SHARES_BELOW_ONE(STOP),
    /** {mounts}: their shares come to {sum}, more than {most}. */
    MOUNT_SHARES_ABOVE_ONE(CHECK),
    /** {mount}: the kit has {count} bolts {bolts}, the mount is judged with {declared} of {area} mm² and {mpa} MPa. */
    MOUNT_BOLTS_OTHER_IN_KIT(CHECK),
    /** {mount}: nobody says which bolts of the kit hold it. */
    MOUNT_BOLTS_NOT_NAMED(CHECK),
    /** No shock has {least} times the weight {direction}: 0 ahead, 1 across; the most is {most}. */
    SHOCK_BELOW_USUAL(CHECK),
    /** {mount} is judged with {mpa} MPa and a factor of {factor}, and a part of it is {steel}: {most} MPa, {least}. */
    MOUNT_WELD_OF_OTHER_STEEL(CHECK),
    /** {mount}: a throat of {throat} mm on a sheet of {sheet} mm, which takes {most} mm. */
    MOUNT_WELD_ABOVE_SHEET(CHECK),
    /** {mount}, {has}, {least}. */
    MOUNT_WELD_THIN(CHECK);

    private final Severity severity;

    MountingFinding(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String room() {
        return "mounting";
    }
}
