package boltlore.trades.weighing;

import boltlore.faults.Outcome;
import boltlore.trades.TradeOption;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A vehicle weighed level and again with one axle lifted, which shows how high its centre of gravity lies.
 *
 * <p>Moments about the axle that stays down give h = r + (ΔF · L / F) · cot θ with sin θ = H / L: r is the radius of the
 * loaded wheels, F the whole vehicle, ΔF what the standing axle gains, L the wheelbase, H the lift of the other axle's
 * wheels (statics of the axle-lift method, as ISO 10392:2011, clause 6, asks to measure for it; derivation:
 * openbooks.link/the-height-above-ground-of-cg). Suspension and tyres are taken to be rigid.
 *
 * @param front whether the front axle is lifted, and not the rear one
 * @param liftMm rise of the lifted wheels
 * @param radiusMm of the loaded wheels, from road to axle
 * @param level loads of both axles in kg on level ground
 * @param standingKg load of the axle that stays down while the other one is lifted
 */
public record LiftedAxle(boolean front, int liftMm, int radiusMm, AxleLoads level, BigDecimal standingKg) {

    static final TradeOption<List<LiftedAxle>> OPTION = new TradeOption<>(
            "--lifted",
            "MEASURED",
            "Weighed with an axle lifted: 'front 600 310 870 1005 1060' is the axle, its lift and the wheels' radius in mm,"
                    + " front and rear load level, and the load of the other axle, in kg; may be given several times.",
            true,
            false,
            LiftedAxle::read);

    private static final int NUMBERS = 5;
    private static final BigDecimal LEAST_SHARE = new BigDecimal("0.1");

    private static Outcome<List<LiftedAxle>> read(List<String> texts) {
        return Outcome.all(texts.stream().map(LiftedAxle::read).toList());
    }

    private static Outcome<LiftedAxle> read(String text) {
        String[] words = text.strip().toLowerCase(Locale.ROOT).split("\\s+", -1);
        List<BigDecimal> numbers = new ArrayList<>();
        for (int i = 1; i < words.length; i++) {
            number(words[i]).ifPresent(numbers::add);
        }
        boolean axle = words[0].equals("front") || words[0].equals("rear");
        if (!axle || words.length != NUMBERS + 1 || numbers.size() != NUMBERS) {
            return OPTION.refused(
                    "'" + text + "'",
                    "'front' or 'rear' and five numbers: lift and wheel radius in mm, front and rear load level, and the load"
                            + " of the other axle, in kg");
        }
        return measured(words[0].equals("front"), numbers);
    }

    private static Outcome<LiftedAxle> measured(boolean front, List<BigDecimal> numbers) {
        int lift = numbers.get(0).intValue();
        int radius = numbers.get(1).intValue();
        LiftedAxle lifted =
                new LiftedAxle(front, lift, radius, new AxleLoads(numbers.get(2), numbers.get(3)), numbers.get(4));
        if (lift < 50 || lift > 3_000) {
            return OPTION.refused("a lift of " + lift + " mm", "from 50 to 3000 mm");
        }
        if (radius < 100 || radius > 800) {
            return OPTION.refused("a wheel radius of " + radius + " mm", "from 100 to 800 mm");
        }
        if (lifted.standingKg.compareTo(lifted.level.totalKg()) >= 0) {
            return OPTION.refused(
                    lifted.standingKg.toPlainString() + " kg on the axle that stays down",
                    "less than the whole vehicle, " + lifted.level.totalKg().toPlainString() + " kg");
        }
        return Outcome.sound(lifted);
    }

    /** A number above 0, at most four digits before the point and three behind it. */
    private static Optional<BigDecimal> number(String text) {
        return text.matches("[0-9]{1,4}(\\.[0-9]{1,3})?") && new BigDecimal(text).signum() > 0
                ? Optional.of(new BigDecimal(text))
                : Optional.empty();
    }

    /** What the standing axle gains; not above 0 where something was read or written down wrongly. */
    BigDecimal gainKg() {
        return standingKg.subtract(front ? level.rearKg() : level.frontKg());
    }

    /** Whether the wheels rise so little that errors of the scale outgrow the gain; a workshop's own value. */
    boolean tooLittle(int wheelbaseMm) {
        return BigDecimal.valueOf(liftMm).compareTo(LEAST_SHARE.multiply(BigDecimal.valueOf(wheelbaseMm))) < 0;
    }

    /** Angle θ of the vehicle to the road; empty where the lift is as long as the wheelbase. */
    Optional<BigDecimal> angleDegrees(int wheelbaseMm) {
        return liftMm >= wheelbaseMm
                ? Optional.empty()
                : Optional.of(BigDecimal.valueOf(Math.toDegrees(Math.asin((double) liftMm / wheelbaseMm))));
    }

    /** Height of the centre of gravity above the road in mm; empty where the lift is as long as the wheelbase. */
    public Optional<BigDecimal> heightMm(int wheelbaseMm) {
        if (liftMm >= wheelbaseMm) {
            return Optional.empty();
        }
        BigDecimal wheelbase = BigDecimal.valueOf(wheelbaseMm);
        BigDecimal lift = BigDecimal.valueOf(liftMm);
        BigDecimal level = wheelbase.pow(2).subtract(lift.pow(2)).sqrt(MathContext.DECIMAL64);
        return Optional.of(gainKg().multiply(wheelbase)
                .multiply(level)
                .divide(this.level.totalKg().multiply(lift), MathContext.DECIMAL64)
                .add(BigDecimal.valueOf(radiusMm)));
    }
}
