package boltlore.trades.braking;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/**
 * What a licensed brake workshop must look at. Each is a Check, on purpose, although a rear axle that locks first may make
 * the vehicle spin, and Directive 71/320/EEC does not allow it to a new type: shares, valve and centre of gravity are
 * estimates that only a brake tester and a brake test confirm; base vehicles are older than the directive, and may lock
 * their rear axle first as they were built; and what puts it right is no part of the kit, so that stopping the kit would
 * not. Who waives it answers for the refit.
 */
public enum BrakingFinding implements Kind {
    /** The vehicle could spin: {case}, {rate}, {most}. */
    REAR_AXLE_LOCKS_FIRST,
    /** The same while the drive unit recuperates, and not without it: {case}, {rate}, {most}, {kn}. */
    REAR_AXLE_LOCKS_FIRST_RECUPERATING,
    /** One axle brakes too much of the whole: {case}, {axle} (0 front, 1 rear), {rate}, {grip}, {least}. */
    ADHESION_NOT_USED,
    /** Half and half is what one writes who has not looked: {percent}. */
    BRAKE_SHARE_GUESSED,
    /** {wanted}, {least}. */
    VACUUM_APPLICATIONS_FEW,
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
