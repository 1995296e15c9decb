package boltlore.trades.driving;

import boltlore.catalogue.Driving.RoadLoad;

/**
 * What a vehicle's motion is resisted by: F = f0 + f1 v + f2 v² on the level, with f0 and f1 from rolling and f2 from the
 * air, in N with v in m/s (the form in which road load is given after a coast-down; Vehicle Dynamics: Theory and
 * Application, chapter 3; any textbook of road vehicles).
 *
 * @param massKg above 0
 * @param f0 in N
 * @param f1 in N per m/s
 * @param f2 in N per (m/s)²
 */
record Resistance(double massKg, double f0, double f1, double f2) {

    /** Standard acceleration of free fall in m/s² (CGPM 1901). */
    static final double GRAVITY = 9.80665;

    /** Density of dry air at 15 °C and 1013.25 hPa in kg/m³ (ISO 2533, standard atmosphere; from memory). */
    static final double AIR_KG_M3 = 1.225;

    /** Rolling: f = (c + k v) m g. Air: f = ρ cd A v² / 2. */
    static Resistance of(double massKg, RoadLoad road) {
        double weight = massKg * GRAVITY;
        return new Resistance(
                massKg,
                weight * road.rollingCoefficient().doubleValue(),
                weight * road.rollingPerMs().doubleValue(),
                AIR_KG_M3 * road.dragAreaM2().doubleValue() / 2);
    }

    /** On the level, in N. */
    double newton(double ms) {
        return f0 + f1 * ms + f2 * ms * ms;
    }

    /**
     * On a gradient, in N: rolling shrinks with the cosine of its angle, the weight pulls with the sine.
     *
     * @param gradient rise over horizontal distance
     */
    double newton(double ms, double gradient) {
        double cosine = 1 / StrictMath.sqrt(1 + gradient * gradient);
        return rolling(ms) * cosine + f2 * ms * ms + massKg * GRAVITY * gradient * cosine;
    }

    /**
     * The gradient on which that force at the wheels keeps this speed, below 0 where it does not even on the level: with
     * the air's part taken off, F = m g (c cos α + sin α), so α = arcsin(F / (m g √(1 + c²))) − arctan c.
     *
     * @return rise over horizontal distance, at most 1
     */
    double gradient(double newton, double ms) {
        double weight = massKg * GRAVITY;
        double coefficient = rolling(ms) / weight;
        double sine = (newton - f2 * ms * ms) / (weight * StrictMath.sqrt(1 + coefficient * coefficient));
        if (sine >= 1) {
            return 1;
        }
        double tangent = StrictMath.tan(StrictMath.asin(Math.max(-1, sine)) - StrictMath.atan(coefficient));
        return Math.min(1, tangent);
    }

    private double rolling(double ms) {
        return f0 + f1 * ms;
    }
}
