package boltlore.trades.mounting;

import boltlore.catalogue.Mounting.Bolts;
import boltlore.catalogue.Mounting.Mount;
import boltlore.catalogue.Mounting.Shock;
import boltlore.catalogue.Mounting.Welds;
import java.util.Set;

/**
 * A mount under one shock. Force: mass × share × g × √(ahead² + across² + down²), and where the drive gives its torque
 * meanwhile, output torque / lever on top, as if both pointed the same way, which is the strict side.
 *
 * @param massKg that hangs on the mount and its like
 * @param outputNm greatest torque of the drive unit's output, which its mounts react; 0 where it holds no drive unit
 */
record MountLoad(Mount mount, Shock shock, double massKg, double outputNm) {

    /** Partial factor for bolts and welds: EN 1993-1-8:2005, 2.2, recommended value; a national annex may say otherwise. */
    static final double GAMMA_M2 = 1.25;

    /** Tensile strengths in MPa of the tough classes 4.6, 5.6 and 8.8. */
    private static final Set<Integer> TOUGH = Set.of(400, 500, 800);

    private static final double SHEAR_TOUGH = 0.6;
    private static final double SHEAR_OTHER = 0.5;

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

    /**
     * What the bolts bear in shear through the thread: n × α fub As / γM2 in N, with α 0.6 for the classes 4.6, 5.6 and
     * 8.8, and 0.5 for all others (EN 1993-1-8:2005, table 3.4).
     */
    static double bears(Bolts bolts) {
        return bolts.count()
                * (TOUGH.contains(bolts.ultimateMpa().intValue()) ? SHEAR_TOUGH : SHEAR_OTHER)
                * bolts.ultimateMpa().doubleValue()
                * bolts.stressAreaMm2().doubleValue()
                / GAMMA_M2;
    }

    /** Design shear strength of a fillet weld: fu / (√3 βw γM2), EN 1993-1-8:2005, 4.5.3.3 (simplified method), in MPa. */
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
