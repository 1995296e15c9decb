package boltlore.trades.weighing;

import boltlore.catalogue.Chassis;
import boltlore.catalogue.Station;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.stream.Stream;

/**
 * Masses with the sum of their moments about the front axle.
 *
 * <p>Static axle loads: the vehicle is a beam on two supports, so the moments about the front axle give the rear load
 * (rear = sum of mass times distance behind the front axle, divided by the wheelbase), the rest stands on the front axle,
 * and the centre of gravity lies behind the front axle by the moments divided by the mass (Vehicle Dynamics: Theory and
 * Application, chapter 2, static axle loads of a parked car).
 *
 * @param momentKgMm each mass in kg times its distance in mm behind the front axle, below 0 ahead of it
 */
public record Balance(BigDecimal massKg, BigDecimal momentKgMm) {

    public static final Balance NONE = new Balance(BigDecimal.ZERO, BigDecimal.ZERO);

    /** One mass at its place. */
    public static Balance of(BigDecimal massKg, BigDecimal behindFrontMm) {
        return new Balance(massKg, massKg.multiply(behindFrontMm));
    }

    static Balance of(BigDecimal massKg, Station at) {
        return of(massKg, BigDecimal.valueOf(at.behindFrontMm()));
    }

    static Balance sum(Stream<Balance> balances) {
        return balances.reduce(NONE, Balance::plus);
    }

    /** A vehicle of which the axle loads are known. */
    public static Balance of(AxleLoads loads, BigDecimal wheelbaseMm) {
        return new Balance(loads.totalKg(), loads.rearKg().multiply(wheelbaseMm));
    }

    static Balance of(Chassis chassis) {
        return of(new AxleLoads(chassis.frontKg(), chassis.rearKg()), BigDecimal.valueOf(chassis.wheelbaseMm()));
    }

    public Balance plus(Balance other) {
        return new Balance(massKg.add(other.massKg), momentKgMm.add(other.momentKgMm));
    }

    public Balance minus(Balance other) {
        return new Balance(massKg.subtract(other.massKg), momentKgMm.subtract(other.momentKgMm));
    }

    /** The front load is what the rear one leaves, so the two add up to the mass without a rounding. */
    public AxleLoads on(BigDecimal wheelbaseMm) {
        BigDecimal rearKg = momentKgMm.divide(wheelbaseMm, MathContext.DECIMAL128);
        return new AxleLoads(massKg.subtract(rearKg), rearKg);
    }

    /**
     * Distance of the centre of gravity behind the front axle in mm.
     *
     * @throws ArithmeticException where there is no mass
     */
    public BigDecimal centreMm() {
        return momentKgMm.divide(massKg, MathContext.DECIMAL128);
    }
}
