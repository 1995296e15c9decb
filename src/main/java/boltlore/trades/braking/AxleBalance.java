package boltlore.trades.braking;

import boltlore.catalogue.Braking.Brakes;
import boltlore.catalogue.Braking.Category;
import boltlore.catalogue.Driving.Driven;
import boltlore.trades.weighing.LoadCase;
import java.util.stream.IntStream;

/**
 * How a vehicle in one load case uses the grip of its axles while it brakes: f1 = T1 / (P1 + z h/E P), f2 = T2 / (P2 − z
 * h/E P), with T1 + T2 = z P; adhesion utilisation as Directive 71/320/EEC, Annex II, Appendix, 3.1.3 and UN Regulation
 * 13-H, Annex 5 have it.
 *
 * @param frontKg standing on the front axle
 * @param rearKg standing on the rear axle
 * @param heightOverBase height of the centre of gravity over the wheelbase
 * @param recuperation what the drive unit brakes with beside the brakes, as soon as anything brakes
 */
record AxleBalance(
        LoadCase loadCase,
        double frontKg,
        double rearKg,
        double heightOverBase,
        Brakes brakes,
        Recuperation recuperation) {

    /** Without what the drive unit does: a full battery takes nothing. */
    AxleBalance(LoadCase loadCase, double frontKg, double rearKg, double heightOverBase, Brakes brakes) {
        this(loadCase, frontKg, rearKg, heightOverBase, brakes, Recuperation.NONE);
    }

    AxleBalance with(Recuperation drive) {
        return new AxleBalance(loadCase, frontKg, rearKg, heightOverBase, brakes, drive);
    }

    /** Braking rates are deceleration over the acceleration of free fall. */
    private static final int FIRST_HUNDREDTH = 15;

    private static final double HUNDRED = 100;
    private static final double STEP = 0.01;
    private static final double GRAVITY = 9.80665;
    private static final double PERCENT = 100;
    private static final double NEWTON_IN_KN = 1000;

    /** In the range between, a passenger car's rear axle may be ahead by a little. */
    private static final double INVERTED_FROM = 0.3;

    private static final double INVERTED_TO = 0.45;
    private static final double INVERTED_BY = 0.05;

    private static final double LEAST_GRIP = 0.2;
    private static final double MOST_GRIP = 0.8;

    double massKg() {
        return frontKg + rearKg;
    }

    /** Load on the front axle while braking, in kg. */
    double frontLoad(double rate) {
        return frontKg + rate * heightOverBase * massKg();
    }

    /** Load on the rear axle while braking, in kg; 0 where it lifts off. */
    double rearLoad(double rate) {
        return Math.max(0, rearKg - rate * heightOverBase * massKg());
    }

    /** The share of the braking force on the front axle that would use both axles alike, as a fraction. */
    double idealFront(double rate) {
        return frontLoad(rate) / (frontLoad(rate) + rearLoad(rate));
    }

    /** The share that brakes and drive unit put there, as a fraction; the drive unit's force comes first. */
    double fittedFront(double rate) {
        double whole = rate * massKg() * GRAVITY;
        if (whole == 0) {
            return brakesFront(0);
        }
        double drive = Math.min(whole, recuperation.newton());
        double front = recuperation.axle() == Driven.FRONT ? drive : 0;
        return (front + (whole - drive) * brakesFront(whole - drive)) / whole;
    }

    /** The front axle's share of that braking force of the brakes alone, in N. */
    private double brakesFront(double newton) {
        double first = brakes.frontPercent().doubleValue() / PERCENT;
        if (brakes.kneeKn() == null || brakes.beyondFrontPercent() == null) {
            return first;
        }
        double knee = brakes.kneeKn().doubleValue() * NEWTON_IN_KN;
        double beyond = brakes.beyondFrontPercent().doubleValue() / PERCENT;
        return newton <= knee ? first : (first * knee + beyond * (newton - knee)) / newton;
    }

    /** Grip that the front axle asks for. */
    double front(double rate) {
        return rate * massKg() * fittedFront(rate) / frontLoad(rate);
    }

    /** Grip that the rear axle asks for; infinite where it lifts off and is braked. */
    double rear(double rate) {
        double load = rearLoad(rate);
        double force = rate * massKg() * (1 - fittedFront(rate));
        return force == 0 ? 0 : force / load;
    }

    /** Up to which braking rate the front axle's curve must lie above the rear's: 0.8 for M1, 0.5 for N1. */
    double lastRate() {
        return brakes.category() == Category.M1 ? 0.8 : 0.5;
    }

    /**
     * The first braking rate at which the rear axle would lock before the front one, in steps of 0.01; NaN where it never
     * does: Directive 71/320/EEC, Annex II, Appendix, 3.1.1. Of a passenger car the rear axle may be ahead between 0.3 and
     * 0.45, as long as it asks for no more than the braking rate and 0.05.
     */
    double rearFirst() {
        return IntStream.rangeClosed(FIRST_HUNDREDTH, (int) Math.round(lastRate() / STEP))
                .mapToDouble(hundredths -> hundredths / HUNDRED)
                .filter(rate -> rear(rate) >= front(rate) && !isAllowed(rate))
                .findFirst()
                .orElse(Double.NaN);
    }

    private boolean isAllowed(double rate) {
        return brakes.category() == Category.M1
                && rate >= INVERTED_FROM - STEP / 2
                && rate <= INVERTED_TO + STEP / 2
                && rear(rate) <= rate + INVERTED_BY;
    }

    /**
     * The first braking rate, in steps of 0.01, at which an axle asks for more grip than it may: z ≥ 0.1 + 0.85 (k − 0.2) for
     * all k from 0.2 to 0.8 of either axle; NaN where it never does. Directive 71/320/EEC, Annex II, Appendix, 3.1.1, of which
     * the public text has the range of k and leaves out the formula, which is from memory; UN Regulation 13-H asks for less.
     */
    double wasteful() {
        return IntStream.rangeClosed(1, (int) HUNDRED)
                .mapToDouble(hundredths -> hundredths / HUNDRED)
                .filter(rate -> asked(rate) >= LEAST_GRIP && asked(rate) <= MOST_GRIP && rate < leastRate(asked(rate)))
                .findFirst()
                .orElse(Double.NaN);
    }

    /** The braking rate that must be reached with that grip. */
    static double leastRate(double grip) {
        return 0.1 + 0.85 * (grip - LEAST_GRIP);
    }

    /** The braking rate at which one axle locks on a road of that grip: the largest at which neither asks for more. */
    double rateOn(double grip) {
        int hundredths = 0;
        while (hundredths < HUNDRED && asked((hundredths + 1) / HUNDRED) <= grip) {
            hundredths++;
        }
        return hundredths / HUNDRED;
    }

    /** The grip that the axle which asks for more of it needs. */
    double asked(double rate) {
        return Math.max(front(rate), rear(rate));
    }
}
