package boltlore.trades.fixings;

import static boltlore.findings.Severity.CHECK;
import static boltlore.findings.Severity.NOTE;
import static boltlore.findings.Severity.STOP;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** What the bolted joints of a kit may show. */
public enum FixingFinding implements Kind {
    BOLT_CLASS_TOO_LOW(STOP),
    NUT_CLASS_TOO_LOW(STOP),
    TORQUE_WITHOUT_TABLE(STOP),
    TORQUE_FAR_TOO_LOW(STOP),
    TORQUE_TOO_LOW(CHECK),
    TORQUE_TOO_HIGH(CHECK),
    TORQUE_FAR_TOO_HIGH(STOP),
    /** The bolts have {bolt}, the tapped hole {hole}. */
    BOLT_OF_OTHER_THREAD(STOP),
    /** {bolts} bolts go into nuts, and only {nuts} of their {thread} come with them. */
    NUTS_TOO_FEW(STOP),
    /** {bolts} bolts of {thread}, and {washers} washers for them. */
    WASHERS_TOO_FEW(CHECK),
    /** The same where the joint holds drive, battery, steering, brakes or people. */
    SAFETY_WASHERS_TOO_FEW(STOP),
    /** The bolts have {bolt}, a washer that comes with them is for {washer}. */
    WASHER_OF_OTHER_SIZE(STOP),
    /** Nothing keeps bolts that are signed for from coming loose. */
    NOT_SECURED(STOP),
    /** {lock} is put on bolts that take a self-locking nut. */
    SECURED_TWICE(CHECK),
    BOLT_NOT_KNOWN(CHECK),
    BOLT_TOO_SHORT_FOR_NUT(STOP),
    /** {left} mm are left of the bolt behind what it clamps, where {most} mm do with the next longer bolt. */
    BOLT_TOO_LONG_FOR_NUT(CHECK),
    THREAD_TOO_SHORT(STOP),
    BOLT_BOTTOMS(STOP),
    BOLT_WITHOUT_TORQUE(CHECK),
    /** The same where the joint holds drive, battery, steering, brakes or people. */
    SAFETY_BOLT_WITHOUT_TORQUE(STOP),
    JOINT_SLIPS(STOP),
    SLIP_MARGIN_SMALL(CHECK),
    SLIP_ESTIMATE_LOW(CHECK),
    BEARING_PRESSURE_HIGH(STOP),
    BEARING_ESTIMATE_HIGH(CHECK),
    CLAMP_NOT_KNOWN(CHECK),
    /** To check: what an angle stretches depends on the stiffness of bolt and parts, which no table here knows. */
    ANGLE_FOR_JUDGEMENT(CHECK),
    SEQUENCE_OF_OTHER_COUNT(CHECK),
    JOINTS_NOT_KNOWN(NOTE);

    private final Severity severity;

    FixingFinding(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String room() {
        return "fixings";
    }
}
