package boltlore.trades.fixings;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Property classes of steel bolts with their strengths in MPa (ISO 898-1:2013, after a handbook page), and grades of inch
 * bolts (SAE J429, after a public table in psi, 1 psi = 0.00689476 MPa).
 */
public enum PropertyClass {
    C4_6("4.6", 4, new Strength(225, 240, 400), "16", new Strength(225, 240, 400)),
    C4_8("4.8", 4, new Strength(310, 340, 420), "16", new Strength(310, 340, 420)),
    C5_6("5.6", 5, new Strength(280, 300, 500), "16", new Strength(280, 300, 500)),
    C5_8("5.8", 5, new Strength(380, 420, 520), "16", new Strength(380, 420, 520)),
    C6_8("6.8", 6, new Strength(440, 480, 600), "16", new Strength(440, 480, 600)),
    C8_8("8.8", 8, new Strength(580, 640, 800), "16", new Strength(600, 660, 830)),
    C10_9("10.9", 10, new Strength(830, 940, 1040), "16", new Strength(830, 940, 1040)),
    C12_9("12.9", 12, new Strength(970, 1100, 1220), "16", new Strength(970, 1100, 1220)),
    GRADE_2("SAE grade 2", 2, new Strength(379, 393, 510), "19.05", new Strength(228, 248, 414)),
    GRADE_5("SAE grade 5", 5, new Strength(586, 634, 827), "25.4", new Strength(510, 558, 724)),
    GRADE_8("SAE grade 8", 8, new Strength(827, 896, 1034), "25.4", new Strength(827, 896, 1034));

    /** In MPa. */
    public record Strength(int proof, int yield, int tensile) {}

    private static final String SAE = "SAE grade ";

    /** What a joint that is signed for takes at least: about 8.8, or grade 5. */
    private static final int LEAST_TENSILE = 800;

    private final String written;
    private final int nut;

    @SuppressWarnings("ImmutableEnumChecker") // records of numbers
    private final Strength thin;

    private final BigDecimal thinUpToMm;

    @SuppressWarnings("ImmutableEnumChecker")
    private final Strength thick;

    PropertyClass(String written, int nut, Strength thin, String thinUpToMm, Strength thick) {
        this.written = written;
        this.nut = nut;
        this.thin = thin;
        this.thinUpToMm = new BigDecimal(thinUpToMm);
        this.thick = thick;
    }

    /** '8.8', or 'SAE J429 grade 5', 'SAE grade 5', 'grade 5'; empty for nuts, stainless steel and what is not known. */
    public static Optional<PropertyClass> of(@Nullable String written) {
        String plain = written == null ? "" : plain(written);
        return Stream.of(values()).filter(each -> each.written.equals(plain)).findFirst();
    }

    private static String plain(String written) {
        return written.replaceFirst("^(SAE )?(J429 |J995 )?grade ", SAE);
    }

    public String written() {
        return written;
    }

    public Strength strength(BigDecimal diameterMm) {
        return diameterMm.compareTo(thinUpToMm) <= 0 ? thin : thick;
    }

    /** Whether it may hold what is signed for. */
    boolean holdsSafety() {
        return thin.tensile() >= LEAST_TENSILE;
    }

    /** The least class of a nut on it, or the least grade of a nut to SAE J995. */
    int nut() {
        return nut;
    }

    /** A nut's class, as one writes it for bolts like this; empty where it is of another system, or not known. */
    Optional<Integer> nutClass(String nut) {
        String plain = plain(nut);
        boolean inch = this.written.startsWith(SAE);
        String number = inch && plain.startsWith(SAE) ? plain.substring(SAE.length()) : inch ? "" : plain;
        return number.matches("\\d{1,2}") ? Optional.of(Integer.valueOf(number)) : Optional.empty();
    }

    /** Stress area × proof stress, in N. */
    public BigDecimal proofLoadNewton(ScrewThread thread) {
        return thread.stressAreaMm2()
                .multiply(BigDecimal.valueOf(strength(thread.diameterMm()).proof()));
    }
}
