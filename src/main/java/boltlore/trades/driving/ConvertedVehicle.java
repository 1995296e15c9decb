package boltlore.trades.driving;

import boltlore.catalogue.Driving.Energy;
import boltlore.catalogue.Driving.Promise;
import org.jspecify.annotations.Nullable;

/**
 * A converted vehicle on the road.
 *
 * @param laden fully laden, as the weight statement has it
 * @param alone with the driver alone
 * @param gross at the gross mass that the chassis may have
 * @param footing what the driven wheels stand on
 * @param usableKwh between what the vehicle calls empty and full
 * @param mildWatts drawn at the battery beside the drive on a mild day
 * @param climateWatts drawn beside that where the cabin is heated or cooled
 */
record ConvertedVehicle(
        Resistance laden,
        Resistance alone,
        Resistance gross,
        Traction traction,
        Footing footing,
        Energy energy,
        double usableKwh,
        double mildWatts,
        double climateWatts,
        @Nullable Promise promise) {

    /** Speeds are looked for in steps of so many m/s: a tenth of a km/h. */
    static final double STEP = 0.1 / 3.6;

    private static final double TENTHS = 10;
    private static final double KMH = 3.6;
    private static final double PERCENT = 100;
    private static final double WH_IN_KWH = 1000;

    /** What sets an end to the speed, or to a gradient. */
    enum Held {
        MOTOR_SPEED("the motor's highest speed"),
        MOTOR_TORQUE("the motor's torque"),
        BATTERY("the battery's current"),
        GRIP("the grip of the driven wheels");

        private final String says;

        Held(String says) {
            this.says = says;
        }

        String says() {
            return says;
        }
    }

    /** A figure with what holds it there. */
    record Reached(double figure, Held by) {}

    /**
     * How the driven wheels stand.
     *
     * @param share of the laden weight on the driven axle
     * @param behind 1 where that is the rear axle, which the slope loads; −1 where it is the front one
     * @param heightOverBase height of the centre of gravity over the wheelbase; 0 where it is not known
     */
    record Footing(double grip, double share, int behind, double heightOverBase) {

        /**
         * The steepest gradient on which the wheels do not slip: μ (N cos α ± W h/L sin α) = W (sin α + c cos α), so
         * tan α = (μ N/W − c) / (1 ∓ μ h/L), the upper sign for a driven rear axle (Vehicle Dynamics: Theory and
         * Application, chapter 2, maximum inclination angle).
         */
        double gradient(double rollingCoefficient) {
            double least = 1 - behind * grip * heightOverBase;
            return least <= 0 ? 1 : Math.min(1, (grip * share - rollingCoefficient) / least);
        }
    }

    /** The highest speed on the level that is kept for hours, fully laden, in m/s. */
    Reached topSpeed() {
        double fastest = traction.fastest();
        if (keeps(fastest)) {
            return new Reached(fastest, Held.MOTOR_SPEED);
        }
        int tenths = (int) StrictMath.floor(fastest / STEP);
        while (tenths > 0 && !keeps(ms(tenths / TENTHS))) {
            tenths--;
        }
        double ms = ms(tenths / TENTHS);
        return new Reached(ms, traction.heldByBattery(ms + STEP) ? Held.BATTERY : Held.MOTOR_TORQUE);
    }

    /** Whether that speed is kept on the level for hours, fully laden. */
    boolean keeps(double ms) {
        return traction.continuousNewton(ms) >= laden.newton(ms);
    }

    /** The steepest gradient on which it starts again at gross mass with the torque for seconds: rise over distance. */
    Reached restart() {
        double torque = gross.gradient(traction.peakNewton(0), 0);
        double grip = footing.gradient(gross.f0() / (gross.massKg() * Resistance.GRAVITY));
        return torque <= grip ? new Reached(torque, Held.MOTOR_TORQUE) : new Reached(grip, Held.GRIP);
    }

    /** The gradient on which a speed is kept for hours, fully laden: rise over distance. */
    double gradientKept(double ms) {
        return Math.min(laden.gradient(traction.continuousNewton(ms), ms), footing.gradient(rolling(ms)));
    }

    private double rolling(double ms) {
        return (laden.f0() + laden.f1() * ms) / (laden.massKg() * Resistance.GRAVITY);
    }

    /** With the torque for seconds on the level, fully laden, in m/s²: (F − resistance) / (m × rotating factor). */
    double acceleration(double ms) {
        double force = traction.peakNewton(ms) - laden.newton(ms);
        return force / (laden.massKg() * traction.road().rotatingFactor().doubleValue());
    }

    /**
     * From standing to a speed with the torque for seconds, fully laden, in s: the sum of Δv / a over steps of
     * {@link #STEP}, each with the acceleration in its middle; infinite where the speed is never reached.
     */
    double secondsTo(double ms) {
        double seconds = 0;
        for (double from = 0; from < ms; from += STEP) {
            double step = Math.min(STEP, ms - from);
            double rate = acceleration(from + step / 2);
            if (rate <= 0) {
                return Double.POSITIVE_INFINITY;
            }
            seconds += step / rate;
        }
        return seconds;
    }

    /**
     * Drawn from the battery at a steady speed on the level, in Wh/km: (F v / (efficiencies) + what else it feeds) / v.
     *
     * @param ms above 0
     */
    double whPerKm(Resistance load, double ms, boolean climate) {
        double drive = load.newton(ms) * ms / traction.efficiency();
        double watts = (drive + mildWatts + (climate ? climateWatts : 0))
                * PERCENT
                / energy.batteryPercent().doubleValue();
        return watts / (ms * KMH);
    }

    /** At a steady speed on the level, in km. */
    double rangeKm(Resistance load, double ms, boolean climate) {
        return usableKwh * WH_IN_KWH / whPerKm(load, ms, climate);
    }

    /** With what everyday driving adds, in km. */
    double everydayKm(Resistance load, double ms, boolean climate) {
        return rangeKm(load, ms, climate) / (1 + energy.everydayPercent().doubleValue() / PERCENT);
    }

    static double ms(double kmh) {
        return kmh / KMH;
    }

    static double kmh(double ms) {
        return ms * KMH;
    }
}
