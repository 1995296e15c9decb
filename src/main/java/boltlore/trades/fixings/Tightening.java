package boltlore.trades.fixings;

import boltlore.catalogue.Fixing;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/**
 * Preload and torque of a bolt that is tightened to 90 % of its yield, after VDI 2230 (torque-controlled tightening).
 *
 * @param friction in the thread and under the head, above 0
 */
public record Tightening(ScrewThread thread, PropertyClass propertyClass, BigDecimal friction) {

    private static final MathContext DIGITS = MathContext.DECIMAL64;
    /** α of a torque wrench, as in a worked bolt calculation after VDI 2230. */
    public static final BigDecimal WRENCH = new BigDecimal("1.8");

    private static final BigDecimal OF_YIELD = new BigDecimal("0.9");
    private static final BigDecimal PERCENT_OF_YIELD = BigDecimal.valueOf(90);

    /** Below it the wrench's scatter leaves less than half of the preload that the bolt is there for: 0.8 / 1.8. */
    private static final BigDecimal FAR_BELOW = new BigDecimal("0.80");

    private static final BigDecimal BELOW = new BigDecimal("0.90");

    /** Published tables round by up to 2 %. */
    private static final BigDecimal ROUNDED = new BigDecimal("1.02");

    /** 99 % of yield: whatever a wrench is off takes the bolt beyond. */
    private static final BigDecimal FAR_ABOVE = new BigDecimal("1.10");

    private static final BigDecimal THREE = BigDecimal.valueOf(3);
    private static final BigDecimal THREE_HALVES = new BigDecimal("1.5");

    /** 1 / cos 30°, for the flanks of the thread. */
    private static final BigDecimal FLANK = new BigDecimal("1.155");

    private static final BigDecimal PITCH_PART = new BigDecimal("0.16");
    private static final BigDecimal THREAD_PART = new BigDecimal("0.58");
    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final int MILLI = 3;

    /** Of a fixing of which thread, class and friction are known. */
    public static Optional<Tightening> of(Fixing fixing) {
        BigDecimal friction = fixing.friction();
        return friction == null
                ? Optional.empty()
                : ScrewThread.of(fixing.thread())
                        .flatMap(thread -> PropertyClass.of(fixing.propertyClass())
                                .map(propertyClass -> new Tightening(thread, propertyClass, friction)));
    }

    /** F = 0.9 · Re · As / √(1 + 3 · [3/2 · d2/d0 · (P/(π d2) + 1.155 µ)]²), in N. */
    public BigDecimal preloadNewton() {
        int yield = propertyClass.strength(thread.diameterMm()).yield();
        BigDecimal twist = THREE_HALVES
                .multiply(thread.pitchDiameterMm().divide(thread.stressDiameterMm(), DIGITS))
                .multiply(thread.turn().add(FLANK.multiply(friction)));
        BigDecimal both = BigDecimal.ONE.add(THREE.multiply(twist.pow(2))).sqrt(DIGITS);
        return OF_YIELD.multiply(BigDecimal.valueOf(yield))
                .multiply(thread.stressAreaMm2())
                .divide(both, DIGITS);
    }

    /** M = F · (0.16 P + 0.58 d2 µ + Dk/2 · µ), in Nm; empty where the bearing face is not known. */
    public Optional<BigDecimal> torqueNm() {
        return thread.bearingMm().map(this::torqueNm);
    }

    private BigDecimal torqueNm(BigDecimal bearingMm) {
        return preloadNewton().multiply(leverMm(bearingMm)).movePointLeft(MILLI);
    }

    private BigDecimal leverMm(BigDecimal bearingMm) {
        return PITCH_PART
                .multiply(thread.pitchMm())
                .add(THREAD_PART.multiply(thread.pitchDiameterMm()).multiply(friction))
                .add(bearingMm.divide(TWO, DIGITS).multiply(friction));
    }

    /** How a torque lies to the computed one, which uses 90 % of the yield. */
    public enum Fit {
        FAR_BELOW,
        BELOW,
        FITS,
        ABOVE,
        FAR_ABOVE
    }

    /** Empty where the bearing face is not known. */
    public Optional<Fit> fit(BigDecimal givenNm) {
        return torqueNm().map(computed -> fit(givenNm, computed));
    }

    private static Fit fit(BigDecimal given, BigDecimal computed) {
        if (given.compareTo(computed.multiply(BELOW)) < 0) {
            return given.compareTo(computed.multiply(FAR_BELOW)) < 0 ? Fit.FAR_BELOW : Fit.BELOW;
        } else if (given.compareTo(computed.multiply(ROUNDED)) <= 0) {
            return Fit.FITS;
        }
        return given.compareTo(computed.multiply(FAR_ABOVE)) > 0 ? Fit.FAR_ABOVE : Fit.ABOVE;
    }

    /** How much of the yield a torque uses, twist included, in %; empty where the bearing face is not known. */
    public Optional<BigDecimal> percentOfYield(BigDecimal givenNm) {
        return torqueNm().map(computed -> PERCENT_OF_YIELD.multiply(givenNm).divide(computed, DIGITS));
    }

    /** The preload in N that a torque in Nm gives, by the same formula; empty where the bearing face is not known. */
    public Optional<BigDecimal> preloadNewton(BigDecimal torqueNm) {
        return thread.bearingMm()
                .map(bearingMm -> torqueNm.movePointRight(MILLI).divide(leverMm(bearingMm), DIGITS));
    }

    /** What is left of a preload where tightening scatters: F / α (VDI 2230). */
    public static BigDecimal afterScatter(BigDecimal preloadNewton, BigDecimal tighteningFactor) {
        return preloadNewton.divide(tighteningFactor, DIGITS);
    }
}
