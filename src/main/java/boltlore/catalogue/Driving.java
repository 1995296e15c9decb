package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What a family says about how its converted vehicle drives, brakes and is cooled, and what holds its parts.
 *
 * @param roadLoads exactly one belongs to an order
 * @param driveUnits exactly one of them is in a kit
 * @param energy null where nothing is said about losses of the battery and about everyday driving
 * @param promises what sales promise; exactly one belongs to an order, or none
 */
public record Driving(
        List<RoadLoad> roadLoads,
        List<DriveUnit> driveUnits,
        @Nullable Energy energy,
        List<Auxiliary> auxiliaries,
        List<Promise> promises,
        Braking braking,
        Cooling cooling,
        Mounting mounting) {

    /** Of a family that says nothing about driving. */
    public static final Driving NONE =
            new Driving(List.of(), List.of(), null, List.of(), List.of(), Braking.NONE, Cooling.NONE, Mounting.NONE);

    /** The axle that is driven. */
    public enum Driven {
        FRONT,
        REAR
    }

    /**
     * What a body does on the road.
     *
     * @param dragAreaM2 drag coefficient times frontal area, in m²
     * @param rollingCoefficient rolling resistance at a crawl over the load on the wheels
     * @param rollingPerMs what it grows by for each m/s
     * @param rollingRadiusMm distance rolled in one turn of the wheel over 2 π
     * @param axleRatio turns of the drive unit's output for one turn of the wheels
     * @param axlePercent efficiency from the drive unit's output to the wheels
     * @param rotatingFactor mass with all that turns over mass, 1 or more
     * @param grip friction between tyre and road that may be counted on
     * @param source where the figures come from
     */
    public record RoadLoad(
            Condition when,
            BigDecimal dragAreaM2,
            BigDecimal rollingCoefficient,
            BigDecimal rollingPerMs,
            int rollingRadiusMm,
            BigDecimal axleRatio,
            BigDecimal axlePercent,
            BigDecimal rotatingFactor,
            BigDecimal grip,
            Driven driven,
            String source) {}

    /**
     * A motor with its inverter and reduction gear.
     *
     * @param ratio turns of the motor for one turn of the output
     * @param gearPercent efficiency of the reduction gear
     * @param motorPercent efficiency of motor and inverter, as an average of driving on the road
     * @param mostRpm of the motor
     * @param recuperationNm torque of the motor's shaft at most when it brakes, or null where nobody says
     * @param curve by rising speed of the motor, from 0 to the most
     */
    public record DriveUnit(
            PartNumber part,
            BigDecimal ratio,
            BigDecimal gearPercent,
            BigDecimal motorPercent,
            int mostRpm,
            @Nullable BigDecimal recuperationNm,
            List<Torque> curve,
            String source) {

        /** The most that its motor gives for seconds, in whole W: P = 2 π n T at each speed of the curve (mechanics of rotation). */
        public BigDecimal peakWatts() {
            return watts(Torque::peakNm);
        }

        /** The most that its motor gives for hours, in whole W. */
        public BigDecimal continuousWatts() {
            return watts(Torque::continuousNm);
        }

        private BigDecimal watts(Function<Torque, BigDecimal> torque) {
            return curve.stream()
                    .map(at -> torque.apply(at)
                            .multiply(BigDecimal.valueOf(at.rpm()))
                            .multiply(BigDecimal.valueOf(Math.PI / 30)))
                    .reduce(BigDecimal.ZERO, BigDecimal::max)
                    .setScale(0, RoundingMode.UP);
        }
    }

    /**
     * Torque of the motor's shaft at a speed, in Nm.
     *
     * @param peakNm for seconds
     * @param continuousNm for hours
     */
    public record Torque(int rpm, BigDecimal peakNm, BigDecimal continuousNm) {}

    /**
     * What is lost between cells and inverter, and what driving adds to a steady speed.
     *
     * @param batteryPercent efficiency of discharging
     * @param everydayPercent added for stops, hills, wind and cold
     */
    public record Energy(BigDecimal batteryPercent, BigDecimal everydayPercent, String source) {}

    /**
     * Power that is drawn beside the drive, in W at the battery.
     *
     * @param climate whether it heats or cools the cabin, and so runs on some days only
     */
    public record Auxiliary(String says, Condition when, BigDecimal watts, boolean climate) {}

    /**
     * What the vehicle is sold with.
     *
     * @param rangeKm on a mild day, fully laden
     * @param rangeAtKmh speed that it is promised for
     * @param gradientPercent on which it starts again at gross mass
     */
    public record Promise(
            Condition when,
            BigDecimal rangeKm,
            BigDecimal rangeAtKmh,
            BigDecimal topSpeedKmh,
            BigDecimal gradientPercent) {}
}
