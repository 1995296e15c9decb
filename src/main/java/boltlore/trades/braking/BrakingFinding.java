package boltlore.trades.braking;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/**
 * What a licensed brake workshop must look at. What cannot stop the car within the rule stops the order: a rear axle that locks
 * first by the brakes alone, an axle that brakes too much of the whole, a vacuum that does not last for the full applications
 * that vehicles are approved with. What less recuperation or a larger reservoir than the rule asks puts right, and whatever
 * cannot be judged, a person looks at and answers for.
 */
public enum BrakingFinding implements Kind {
    /** The vehicle could spin: {case}, {rate}, {most}. */
    REAR_AXLE_LOCKS_FIRST(Severity.STOP),
    /** The same while the drive unit recuperates, and not without it: {case}, {rate}, {most}, {kn}. */
    REAR_AXLE_LOCKS_FIRST_RECUPERATING(Severity.CHECK),
    /** One axle brakes too much of the whole: {case}, {axle} (0 front, 1 rear), {rate}, {grip}, {least}. */
    ADHESION_NOT_USED(Severity.STOP),
    /** The same while the drive unit recuperates, and not without it. */
    ADHESION_NOT_USED_RECUPERATING(Severity.CHECK),
    /** Half and half is what one writes who has not looked: {percent}. */
    BRAKE_SHARE_GUESSED(Severity.CHECK),
    /** {wanted}, {least}. */
    VACUUM_APPLICATIONS_FEW(Severity.CHECK),
    /** Fewer applications than the workshop wants, and no fewer than the rule: {helped}, {wanted}, {least}. */
    VACUUM_RESERVE_SHORT(Severity.CHECK),
    /** Fewer than vehicles are approved with: {helped}, {rule}, {least}. */
    VACUUM_BELOW_RULE(Severity.STOP),
    /** The conversion changes the mass by {kg} kg, and {file} is not there: whether the brakes suit it nobody knows. */
    BRAKES_NOT_JUDGED(Severity.CHECK);

    private final Severity severity;

    BrakingFinding(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String room() {
        return "braking";
    }
}
