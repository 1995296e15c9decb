package boltlore.trades.fixings;

import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * An ISO metric thread with the sizes that follow from diameter and pitch (ISO 724, ISO 898-1).
 *
 * @param diameterMm nominal diameter d
 * @param pitchMm pitch P
 */
public record MetricThread(BigDecimal diameterMm, BigDecimal pitchMm) {

    private static final MathContext DIGITS = MathContext.DECIMAL64;
    private static final BigDecimal PI = new BigDecimal("3.141592653589793");
    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final BigDecimal FOUR = BigDecimal.valueOf(4);
    private static final BigDecimal PITCH_SHARE = new BigDecimal("0.649519");
    private static final BigDecimal CORE_SHARE = new BigDecimal("1.226869");

    private static final Pattern WRITTEN = Pattern.compile("M([0-9]+(?:\\.[0-9]+)?)(?:x([0-9]+(?:\\.[0-9]+)?))?");

    /** Coarse pitches in mm (ISO 261). */
    private static final Map<String, String> COARSE = Map.of(
            "4", "0.7", "5", "0.8", "6", "1", "8", "1.25", "10", "1.5", "12", "1.75", "14", "2", "16", "2", "20",
            "2.5");

    /**
     * Mean diameter of the head's bearing face in mm: mean of hexagon face and medium clearance hole; M6 to M12 as published
     * with the torques, the others from memory (ISO 4014, ISO 273).
     */
    private static final Map<String, String> BEARING = Map.of(
            "4", "5.2", "5", "6.2", "6", "7.75", "8", "10.3", "10", "12.8", "12", "15.05", "14", "17.55", "16", "20",
            "20", "25.1");

    /** 'M8' or 'M8x1'; empty for what is no metric thread, or a size without a coarse pitch here. */
    public static Optional<MetricThread> of(String written) {
        Matcher thread = WRITTEN.matcher(written);
        return thread.matches() ? of(thread.group(1), thread.group(2)) : Optional.empty();
    }

    private static Optional<MetricThread> of(String diameter, @Nullable String pitch) {
        String used = pitch == null ? COARSE.get(diameter) : pitch;
        return used == null
                ? Optional.empty()
                : Optional.of(new MetricThread(new BigDecimal(diameter), new BigDecimal(used)))
                        .filter(thread -> thread.coreMm().signum() > 0);
    }

    /** d2 = d − 0.6495 P, in mm. */
    public BigDecimal pitchDiameterMm() {
        return diameterMm.subtract(PITCH_SHARE.multiply(pitchMm));
    }

    /** d3 = d − 1.2269 P, in mm. */
    public BigDecimal coreMm() {
        return diameterMm.subtract(CORE_SHARE.multiply(pitchMm));
    }

    /** d0 = (d2 + d3) / 2, in mm. */
    BigDecimal stressDiameterMm() {
        return pitchDiameterMm().add(coreMm()).divide(TWO, DIGITS);
    }

    /** π/4 · d0², in mm². */
    public BigDecimal stressAreaMm2() {
        return PI.multiply(stressDiameterMm().pow(2)).divide(FOUR, DIGITS);
    }

    /** Mean diameter in mm that a hexagon head rubs at; empty for sizes that are not known. */
    public Optional<BigDecimal> bearingMm() {
        return Optional.ofNullable(BEARING.get(Digits.plain(diameterMm))).map(BigDecimal::new);
    }

    BigDecimal turn() {
        return pitchMm.divide(PI.multiply(pitchDiameterMm()), DIGITS);
    }
}
