package boltlore.trades.cooling;

import boltlore.catalogue.Cooling.Coolant;

/**
 * Coolant in a round hose. Pressure drop after Darcy and Weisbach: Δp = f L/d ρ v²/2, with f = 64/Re below a Reynolds number
 * of 2300 and after Haaland above it: 1/√f = −1.8 lg((ε/d / 3.7)^1.11 + 6.9/Re) (White, Fluid Mechanics, chapter 6).
 */
record PipeFlow(Coolant coolant, double boreMm, double roughnessMm) {

    static final double LAMINAR = 2300;

    private static final double MM = 1000;
    private static final double LITRES_PER_MIN = 60_000;
    private static final double PA_IN_KPA = 1000;

    /** Mean speed in m/s. */
    double speed(double litresPerMin) {
        double bore = boreMm / MM;
        return litresPerMin / LITRES_PER_MIN / (StrictMath.PI * bore * bore / 4);
    }

    double reynolds(double litresPerMin) {
        return coolant.densityKgM3().doubleValue()
                * speed(litresPerMin)
                * boreMm
                / coolant.viscosityMpas().doubleValue();
    }

    /** The friction factor of Darcy. */
    double friction(double reynolds) {
        if (reynolds < LAMINAR) {
            return 64 / reynolds;
        }
        double rough = StrictMath.pow(roughnessMm / boreMm / 3.7, 1.11);
        double root = -1.8 * StrictMath.log10(rough + 6.9 / reynolds);
        return 1 / (root * root);
    }

    /** Along so many mm of hose, in kPa; none without flow. */
    double hoseKpa(double lengthMm, double litresPerMin) {
        return litresPerMin == 0 ? 0 : friction(reynolds(litresPerMin)) * lengthMm / boreMm * dynamicKpa(litresPerMin);
    }

    /** In so many dynamic pressures of loss, in kPa. */
    double fittingKpa(double zeta, double litresPerMin) {
        return zeta * dynamicKpa(litresPerMin);
    }

    private double dynamicKpa(double litresPerMin) {
        double speed = speed(litresPerMin);
        return coolant.densityKgM3().doubleValue() * speed * speed / 2 / PA_IN_KPA;
    }
}
