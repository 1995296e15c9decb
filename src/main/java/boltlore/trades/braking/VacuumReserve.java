package boltlore.trades.braking;

import boltlore.catalogue.Braking.Vacuum;

/**
 * What is left of the vacuum while the pump stands still. An application fills the swept volume Vs with air at outside
 * pressure p0, and its release lets all of that into the volume V of reservoir, servo and hoses, at the depression u: the
 * depression falls by (n p0 − (n − 1) u) Vs / V (energy balance of letting air into a rigid vessel: n = 1 where the heat goes
 * at once, which is p0 Vs / V by Boyle's law, n = 1.4, the ratio of specific heats of air, where none goes; worked out by
 * hand, and the strict side).
 */
record VacuumReserve(Vacuum vacuum) {

    /** Standard atmosphere in kPa (ISO 2533; from memory). */
    static final double AIR_KPA = 101.325;

    private static final int MOST = 100;
    private static final double SECONDS = 60;

    double volumeLitres() {
        return vacuum.reservoirLitres().add(vacuum.restLitres()).doubleValue();
    }

    /** Depression in kPa after so many full applications from where the pump would have started. */
    double after(int applications) {
        double exponent = vacuum.exponent().doubleValue();
        double share = vacuum.strokeLitres().doubleValue() / volumeLitres();
        double depression = vacuum.cutInKpa().doubleValue();
        for (int i = 0; i < applications; i++) {
            depression = Math.max(0, depression - (exponent * AIR_KPA - (exponent - 1) * depression) * share);
        }
        return depression;
    }

    /** Full applications that start with enough vacuum while the pump stands still. */
    int helped() {
        int count = 0;
        while (count < MOST && after(count) >= vacuum.leastKpa().doubleValue()) {
            count++;
        }
        return count;
    }

    /**
     * Seconds that the pump takes from start to stop: t = V/S ln(p1/p2), the pump's speed S being the same at all
     * pressures (pumping down a vessel; any textbook of vacuum technology).
     */
    double pumpSeconds() {
        double from = AIR_KPA - vacuum.cutInKpa().doubleValue();
        double to = AIR_KPA - vacuum.cutOutKpa().doubleValue();
        return volumeLitres() / vacuum.pumpLitresPerMin().doubleValue() * SECONDS * StrictMath.log(from / to);
    }
}
