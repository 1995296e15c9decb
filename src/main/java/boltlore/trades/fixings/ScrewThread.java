package boltlore.trades.fixings;

import boltlore.catalogue.ThreadName;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/**
 * A screw thread of 60 degrees with the sizes that follow from diameter and pitch: ISO metric (ISO 724, ISO 898-1) or
 * unified inch (ASME B1.1).
 *
 * @param diameterMm nominal diameter d
 * @param pitchMm pitch P
 * @param stressShare what the stress diameter is below d, in pitches
 */
public record ScrewThread(BigDecimal diameterMm, BigDecimal pitchMm, BigDecimal stressShare) {

    private static final MathContext DIGITS = MathContext.DECIMAL64;
    private static final BigDecimal PI = new BigDecimal("3.141592653589793");
    private static final BigDecimal FOUR = BigDecimal.valueOf(4);
    private static final BigDecimal PITCH_SHARE = new BigDecimal("0.649519");
    private static final BigDecimal CORE_SHARE = new BigDecimal("1.226869");

    /** d0 = (d2 + d3) / 2 = d − 0.938194 P. */
    private static final BigDecimal METRIC_SHARE = new BigDecimal("0.938194");

    /** At = 0.7854 (D − 0.9743 / n)², ASME B1.1. */
    private static final BigDecimal UNIFIED_SHARE = new BigDecimal("0.9743");

    /**
     * 'M8' or 'M8x1', '7/16-20 UNF', '1/2-13 UNC' or '3/8-24'; empty for a thread of pipes, which holds no bolt, and for what
     * {@link ThreadName} does not know.
     */
    public static Optional<ScrewThread> of(String written) {
        return ThreadName.of(written)
                .flatMap(ScrewThread::of)
                .filter(thread -> thread.coreMm().signum() > 0);
    }

    private static Optional<ScrewThread> of(ThreadName name) {
        return switch (name.form()) {
            case METRIC -> Optional.of(new ScrewThread(name.diameterMm(), name.pitchMm(), METRIC_SHARE));
            case UNIFIED -> Optional.of(new ScrewThread(name.diameterMm(), name.pitchMm(), UNIFIED_SHARE));
            case NPT, G, R, RP, RC -> Optional.empty();
        };
    }

    /** d2 = d − 0.6495 P, in mm. */
    public BigDecimal pitchDiameterMm() {
        return diameterMm.subtract(PITCH_SHARE.multiply(pitchMm));
    }

    /** d3 = d − 1.2269 P, in mm. */
    public BigDecimal coreMm() {
        return diameterMm.subtract(CORE_SHARE.multiply(pitchMm));
    }

    /** d0, in mm. */
    BigDecimal stressDiameterMm() {
        return diameterMm.subtract(stressShare.multiply(pitchMm));
    }

    /** π/4 · d0², in mm². */
    public BigDecimal stressAreaMm2() {
        return PI.multiply(stressDiameterMm().pow(2)).divide(FOUR, DIGITS);
    }

    /** Mean diameter in mm that a hexagon head rubs at; empty for sizes that are not known. */
    public Optional<BigDecimal> bearingMm() {
        return HeadFace.under(this).map(HeadFace::meanMm);
    }

    BigDecimal turn() {
        return pitchMm.divide(PI.multiply(pitchDiameterMm()), DIGITS);
    }
}
