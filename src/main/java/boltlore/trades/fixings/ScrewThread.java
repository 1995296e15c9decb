package boltlore.trades.fixings;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

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

    private static final BigDecimal INCH_MM = new BigDecimal("25.4");

    private static final Pattern METRIC = Pattern.compile("M([0-9]+(?:\\.[0-9]+)?)(?:x([0-9]+(?:\\.[0-9]+)?))?");
    private static final Pattern UNIFIED = Pattern.compile("(#?[0-9]+(?:/[0-9]+)?)-([0-9]{1,2}) (UNC|UNF)");

    /** Coarse pitches in mm (ISO 261). */
    private static final Map<String, String> COARSE = Map.ofEntries(
            Map.entry("3", "0.5"),
            Map.entry("4", "0.7"),
            Map.entry("5", "0.8"),
            Map.entry("6", "1"),
            Map.entry("8", "1.25"),
            Map.entry("10", "1.5"),
            Map.entry("12", "1.75"),
            Map.entry("14", "2"),
            Map.entry("16", "2"),
            Map.entry("18", "2.5"),
            Map.entry("20", "2.5"),
            Map.entry("22", "2.5"),
            Map.entry("24", "3"));

    /** Threads to the inch of the coarse and the fine series, by diameter (ASME B1.1; UNF after boltport.com). */
    private static final Map<String, String> UNIFIED_SERIES = Map.ofEntries(
            Map.entry("#8", "32 36"),
            Map.entry("#10", "24 32"),
            Map.entry("1/4", "20 28"),
            Map.entry("5/16", "18 24"),
            Map.entry("3/8", "16 24"),
            Map.entry("7/16", "14 20"),
            Map.entry("1/2", "13 20"),
            Map.entry("9/16", "12 18"),
            Map.entry("5/8", "11 18"),
            Map.entry("3/4", "10 16"),
            Map.entry("7/8", "9 14"),
            Map.entry("1", "8 12"));

    /** A numbered size is 0.060 inch and 0.013 inch for each number. */
    private static final BigDecimal FIRST_INCH = new BigDecimal("0.060");

    private static final BigDecimal STEP_INCH = new BigDecimal("0.013");

    /**
     * 'M8' or 'M8x1', '7/16-20 UNF' or '1/2-13 UNC'; empty for what is neither, for a size without a coarse pitch here, and
     * for an inch thread whose threads to the inch are not those of its series.
     */
    public static Optional<ScrewThread> of(String written) {
        Matcher metric = METRIC.matcher(written);
        if (metric.matches()) {
            return metric(metric.group(1), metric.group(2));
        }
        Matcher inch = UNIFIED.matcher(written);
        return inch.matches() ? unified(inch.group(1), inch.group(2), inch.group(3)) : Optional.empty();
    }

    private static Optional<ScrewThread> metric(String diameter, @Nullable String pitch) {
        String used = pitch == null ? COARSE.get(diameter) : pitch;
        return used == null
                ? Optional.empty()
                : Optional.of(new ScrewThread(new BigDecimal(diameter), new BigDecimal(used), METRIC_SHARE))
                        .filter(thread -> thread.coreMm().signum() > 0);
    }

    private static Optional<ScrewThread> unified(String diameter, String toTheInch, String series) {
        String known = UNIFIED_SERIES.get(diameter);
        return known == null || !known.split(" ", -1)[series.equals("UNC") ? 0 : 1].equals(toTheInch)
                ? Optional.empty()
                : Optional.of(new ScrewThread(
                        inches(diameter).multiply(INCH_MM),
                        INCH_MM.divide(new BigDecimal(toTheInch), DIGITS),
                        UNIFIED_SHARE));
    }

    private static BigDecimal inches(String diameter) {
        if (diameter.startsWith("#")) {
            return FIRST_INCH.add(STEP_INCH.multiply(new BigDecimal(diameter.substring(1))));
        }
        String[] parts = diameter.split("/", -1);
        return parts.length == 1
                ? new BigDecimal(diameter)
                : new BigDecimal(parts[0]).divide(new BigDecimal(parts[1]), DIGITS);
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
