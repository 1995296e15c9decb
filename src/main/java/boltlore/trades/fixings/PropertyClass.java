package boltlore.trades.fixings;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Property classes of steel bolts with their strengths in MPa (ISO 898-1:2013, after a handbook page). */
public enum PropertyClass {
    C8_8("8.8", new Strength(580, 640, 800), new Strength(600, 660, 830)),
    C10_9("10.9", new Strength(830, 940, 1040), new Strength(830, 940, 1040)),
    C12_9("12.9", new Strength(970, 1100, 1220), new Strength(970, 1100, 1220));

    /** In MPa. */
    public record Strength(int proof, int yield, int tensile) {}

    /** Bolts of class 8.8 above this diameter have the higher strengths (ISO 898-1:2013). */
    private static final BigDecimal THICK_MM = BigDecimal.valueOf(16);

    private final String written;

    @SuppressWarnings("ImmutableEnumChecker") // records of numbers
    private final Strength upTo16;

    @SuppressWarnings("ImmutableEnumChecker")
    private final Strength above16;

    PropertyClass(String written, Strength upTo16, Strength above16) {
        this.written = written;
        this.upTo16 = upTo16;
        this.above16 = above16;
    }

    /** Empty for nuts, stainless steel and what is not known. */
    public static Optional<PropertyClass> of(@Nullable String written) {
        return Stream.of(values()).filter(each -> each.written.equals(written)).findFirst();
    }

    public String written() {
        return written;
    }

    public Strength strength(BigDecimal diameterMm) {
        return diameterMm.compareTo(THICK_MM) <= 0 ? upTo16 : above16;
    }

    /** The least class of a nut on it. */
    int nut() {
        return Integer.parseInt(written.substring(0, written.indexOf('.')));
    }

    /** Stress area × proof stress, in N. */
    public BigDecimal proofLoadNewton(MetricThread thread) {
        return thread.stressAreaMm2()
                .multiply(BigDecimal.valueOf(strength(thread.diameterMm()).proof()));
    }
}
