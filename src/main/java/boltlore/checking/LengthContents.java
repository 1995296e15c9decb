package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Part;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a cable or hose contains by the metre follows from its length: so many cores of its full length, or a sleeve that
 * leaves the ends free. Where the quantity was written down by hand, it is compared with the length.
 */
final class LengthContents {

    private static final int KILO = 3;
    private static final int DIGITS = 4;

    /** Cut off at the ends or lost in a crimp, as a share of the length. */
    private static final BigDecimal TOLERANCE = new BigDecimal("0.02");

    /** A sleeve covers at least that share. */
    private static final BigDecimal SLEEVE = new BigDecimal("0.75");

    private LengthContents() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.parts().values().stream()
                .filter(part -> part.lengthMm() != null)
                .flatMap(part -> part.contains().stream()
                        .filter(child -> child.perMetre() == null)
                        .filter(child -> catalogue.part(child.part()).unit().equals("m"))
                        .flatMap(child -> of(part, child).stream()));
    }

    private static Optional<Remark> of(Part part, Contained child) {
        BigDecimal metres = BigDecimal.valueOf(part.lengthMm() == null ? 0 : part.lengthMm())
                .movePointLeft(KILO);
        BigDecimal times = child.quantity().divide(metres, DIGITS, RoundingMode.HALF_EVEN);
        BigDecimal whole = times.setScale(0, RoundingMode.HALF_EVEN).max(BigDecimal.ONE);
        boolean cores = times.subtract(whole).abs().compareTo(TOLERANCE.multiply(whole)) <= 0;
        boolean sleeve = times.compareTo(SLEEVE) >= 0 && times.compareTo(BigDecimal.ONE) <= 0;
        return cores || sleeve
                ? Optional.empty()
                : Optional.of(new Remark(
                        Said.part(part),
                        Check.METRES,
                        Digits.plain(child.quantity()) + " m of " + child.part() + " in a part of " + part.lengthMm()
                                + " mm",
                        "the length once, twice … for cores side by side, or a little less of a sleeve",
                        "Write 'perMetre' in place of 'quantity', so that it follows from the length"));
    }
}
