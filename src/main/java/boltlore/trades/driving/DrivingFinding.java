package boltlore.trades.driving;

import static boltlore.findings.Severity.CHECK;
import static boltlore.findings.Severity.STOP;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** Where a converted vehicle does not do what it is sold with. */
public enum DrivingFinding implements Kind {
    /** The motor would burst before the vehicle is as fast as promised: {speed}, {rpm}, {most}. */
    MOTOR_OVERSPEED(STOP),
    /** It is not kept for hours: {speed}, {reached}. */
    TOP_SPEED_NOT_REACHED(CHECK),
    /** {gradient}, {reached}, {mass}, {grip}: 1 where the wheels slip, 0 where the torque does not do. */
    GRADIENT_NOT_RESTARTED(CHECK),
    /** {range}, {promised}, {speed}. */
    RANGE_BELOW_PROMISE(CHECK);

    private final Severity severity;

    DrivingFinding(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String room() {
        return "driving";
    }
}
