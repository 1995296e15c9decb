package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fuse;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a fuse lets through while it breaks a short circuit grows with the square of its rated current among fuses of one make-up:
 * the energy that melts an element goes with the square of its section, and so with that of its rating (adiabatic heating, as in
 * IEC 60269-1; from memory). Fuses of one voltage and breaking capacity are taken for one make-up.
 */
final class FusesAlike {

    /** So many others say what is usual. */
    private static final int OTHERS = 2;

    /** Makers' tables of one series keep within it over a decade of ratings; common practice, no source. */
    private static final BigDecimal FACTOR = new BigDecimal("2.5");

    private FusesAlike() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream()
                .flatMap(family -> family.electrics().fuses().stream()
                        .flatMap(fuse -> unlike(family, fuse, family.electrics().fuses())));
    }

    private static Stream<Remark> unlike(Family family, Fuse fuse, List<Fuse> all) {
        List<BigDecimal> others = all.stream()
                .filter(other -> !other.equals(fuse)
                        && other.volts().compareTo(fuse.volts()) == 0
                        && other.breakingKiloamps().compareTo(fuse.breakingKiloamps()) == 0)
                .map(FusesAlike::bySquare)
                .sorted()
                .toList();
        if (others.size() < OTHERS) {
            return Stream.empty();
        }
        BigDecimal median = others.get(others.size() / 2);
        BigDecimal own = bySquare(fuse);
        BigDecimal square = fuse.amps().multiply(fuse.amps());
        return own.compareTo(median.multiply(FACTOR)) <= 0 && median.compareTo(own.multiply(FACTOR)) <= 0
                ? Stream.empty()
                : Stream.of(new Remark(
                        "fuse " + family.name() + "/" + fuse.name(),
                        Check.FUSE_UNLIKE,
                        "'letThroughA2s' " + Digits.plain(fuse.letThroughA2s()) + " at " + Digits.plain(fuse.amps())
                                + " A",
                        "about " + Digits.upTo(median.multiply(square), 0)
                                + " A²s, which goes with the square of the rating as in its other fuses of that voltage",
                        "Look at the point, and take it from the fuse's data sheet at the pack's voltage"));
    }

    private static BigDecimal bySquare(Fuse fuse) {
        return fuse.letThroughA2s().divide(fuse.amps().multiply(fuse.amps()), MathContext.DECIMAL32);
    }
}
