package boltlore.trades.braking;

import boltlore.catalogue.Braking.Vacuum;

/**
 * What is left of the vacuum while the pump stands still. An application lets air at outside pressure p0 into the volume V
 * of reservoir, servo and hoses; into a rigid vessel that fills with the exponent n the pressure rises by n (p0 − p) Vs / V
 * (energy balance of filling a vessel: n = 1 where the heat goes at once, n = 1.4, the ratio of specific heats of air, where
 * none goes; any textbook of thermodynamics). So a depression u becomes u (1 − n Vs / V).
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
        double kept =
                1 - vacuum.exponent().doubleValue() * vacuum.strokeLitres().doubleValue() / volumeLitres();
        return vacuum.cutInKpa().doubleValue() * StrictMath.pow(Math.max(0, kept), applications);
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
