package boltlore.trades.mounting;

import boltlore.catalogue.Mounting.Bolts;
import boltlore.catalogue.Mounting.Mount;
import boltlore.catalogue.Mounting.Shock;
import boltlore.catalogue.Mounting.Welds;

/**
 * A mount under one shock. Force: mass × share × g × √(ahead² + across² + down²), and where the drive gives its torque
 * meanwhile, output torque / lever on top, as if both pointed the same way, which is the strict side.
 *
 * @param massKg that hangs on the mount and its like
 * @param outputNm greatest torque of the drive unit's output, which its mounts react; 0 where it holds no drive unit
 */
record MountLoad(Mount mount, Shock shock, double massKg, double outputNm) {

    /** Partial factor for bolts and welds: EN 1993-1-8, 2.2, recommended value; a national annex may say otherwise. */
    static final double GAMMA_M2 = 1.25;

    /** Shear of a thread of class 8.8 over its tensile strength: EN 1993-1-8, table 3.4 (from memory). */
    static final double SHEAR = 0.6;

    private static final double GRAVITY = 9.80665;
    private static final double MM = 1000;

    double newton() {
        double times = StrictMath.sqrt(square(shock.ahead().doubleValue())
                + square(shock.across().doubleValue())
                + square(shock.down().doubleValue()));
        return massKg * mount.share().doubleValue() * GRAVITY * times + torqueNewton();
    }

    private double torqueNewton() {
        return shock.torque() && mount.leverMm() != null
                ? outputNm / (mount.leverMm().doubleValue() / MM)
                : 0;
    }

    /** What the bolts bear in shear through the thread: n × 0.6 fub As / γM2 (EN 1993-1-8, table 3.4), in N. */
    static double bears(Bolts bolts) {
        return bolts.count()
                * SHEAR
                * bolts.ultimateMpa().doubleValue()
                * bolts.stressAreaMm2().doubleValue()
                / GAMMA_M2;
    }

    /** Design shear strength of a fillet weld: fu / (√3 βw γM2), EN 1993-1-8, 4.5.3.3 (simplified method), in MPa. */
    static double strengthMpa(Welds welds) {
        return welds.ultimateMpa().doubleValue()
                / (StrictMath.sqrt(3) * welds.correlation().doubleValue() * GAMMA_M2);
    }

    /** What the welds bear whichever way the load points: strength × throat × length, in N. */
    static double bears(Welds welds) {
        return strengthMpa(welds)
                * welds.throatMm().doubleValue()
                * welds.lengthMm().doubleValue();
    }

    /** The throat that the welds need: a ≥ F / (fvw,d × l), in mm. */
    double throatMm(Welds welds) {
        return newton() / (strengthMpa(welds) * welds.lengthMm().doubleValue());
    }

    /** What the weaker of bolts and welds bears over the load; a mount has at least one of them. */
    double margin() {
        double bolts = mount.bolts() == null ? Double.POSITIVE_INFINITY : bears(mount.bolts());
        double welds = mount.welds() == null ? Double.POSITIVE_INFINITY : bears(mount.welds());
        return Math.min(bolts, welds) / newton();
    }

    private static double square(double number) {
        return number * number;
    }
}
