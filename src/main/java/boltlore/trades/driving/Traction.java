package boltlore.trades.driving;

import boltlore.catalogue.Driving.DriveUnit;
import boltlore.catalogue.Driving.RoadLoad;
import boltlore.catalogue.Driving.Torque;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;

/**
 * What a drive unit brings to the wheels: force = torque × ratio × efficiency / rolling radius, and for hours no more than
 * the battery feeds: force ≤ power of the battery × efficiencies / speed (Vehicle Dynamics: Theory and Application,
 * chapter 4, driveline).
 *
 * @param batteryWatts that the battery bears for hours beside what else it feeds
 */
record Traction(DriveUnit unit, RoadLoad road, double batteryWatts) {

    private static final double RPM = 60 / (2 * StrictMath.PI);
    private static final double PERCENT = 100;
    private static final double MM = 1000;

    /** Turns of the motor for one turn of the wheels. */
    double ratio() {
        return unit.ratio().doubleValue() * road.axleRatio().doubleValue();
    }

    /** Speed of the motor at that speed of the vehicle. */
    double rpm(double ms) {
        return ms / radius() * ratio() * RPM;
    }

    /** Speed of the vehicle at the motor's highest, in m/s. */
    double fastest() {
        return unit.mostRpm() / RPM / ratio() * radius();
    }

    /** For seconds, at the wheels, in N; none above the motor's highest speed. */
    double peakNewton(double ms) {
        return newton(ms, Torque::peakNm);
    }

    /** For hours, at the wheels, in N. */
    double continuousNewton(double ms) {
        double motor = newton(ms, Torque::continuousNm);
        return ms == 0 ? motor : Math.min(motor, batteryNewton(ms));
    }

    /** Whether the battery holds back at that speed, above 0, what the motor would give for hours. */
    boolean heldByBattery(double ms) {
        return batteryNewton(ms) < newton(ms, Torque::continuousNm);
    }

    /** From inverter to wheels, as a fraction. */
    double efficiency() {
        return share(unit.motorPercent()) * mechanical();
    }

    private double batteryNewton(double ms) {
        return batteryWatts * efficiency() / ms;
    }

    private double newton(double ms, Function<Torque, BigDecimal> curve) {
        return nm(rpm(ms), curve) * ratio() * mechanical() / radius();
    }

    private double mechanical() {
        return share(unit.gearPercent()) * share(road.axlePercent());
    }

    private double radius() {
        return road.rollingRadiusMm() / MM;
    }

    /**
     * In a straight line between the points of the curve, but with no more power than at the best of them: where power is
     * held, torque falls as 1 / speed, and a straight line between two such points would lie above it.
     */
    private double nm(double rpm, Function<Torque, BigDecimal> curve) {
        List<Torque> points = unit.curve();
        for (int i = 1; i < points.size(); i++) {
            Torque left = points.get(i - 1);
            Torque right = points.get(i);
            // A hair of rounding above the last point is still on the curve.
            if (rpm <= right.rpm() * (1 + 1e-12)) {
                double along = (rpm - left.rpm()) / (right.rpm() - left.rpm());
                double from = curve.apply(left).doubleValue();
                double line = from + along * (curve.apply(right).doubleValue() - from);
                return rpm > 0 ? Math.min(line, mostPower(curve) / rpm) : line;
            }
        }
        return 0;
    }

    /** In Nm × rpm. */
    private double mostPower(Function<Torque, BigDecimal> curve) {
        return unit.curve().stream()
                .mapToDouble(point -> curve.apply(point).doubleValue() * point.rpm())
                .max()
                .orElse(0);
    }

    private static double share(BigDecimal percent) {
        return percent.doubleValue() / PERCENT;
    }
}
