package boltlore.trades.coating;

import boltlore.catalogue.Workshop;
import boltlore.findings.Finding;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.stream.Stream;

/**
 * Powder that was issued for a run against what its film should have taken.
 *
 * @param theoryKg by area, film and the utilisation planned
 * @param differencePercent of the theory; above 0 where more was issued
 * @param onPartsPercent share of the powder issued that the film at its target would be
 */
public record PowderVerdict(
        PowderRun run,
        BigDecimal theoryKg,
        BigDecimal issuedKg,
        BigDecimal differencePercent,
        BigDecimal onPartsPercent) {

    /** Up to so many per cent off the theory nobody asks; common practice, no source. */
    public static final int USUAL_PERCENT = 15;

    /** More than this share does not end on parts even where overspray is gathered; trade article on transfer efficiency. */
    public static final int MOST_ON_PARTS_PERCENT = 85;

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** The kg issued are above 0. */
    public static PowderVerdict of(PowderRun run, BigDecimal issuedKg, Workshop workshop) {
        PowderUse use = PowderUse.of(run, workshop);
        return of(run, use.filmKg(), use.issueKg(), issuedKg);
    }

    static PowderVerdict of(PowderRun run, BigDecimal filmKg, BigDecimal theoryKg, BigDecimal issuedKg) {
        BigDecimal difference = percent(issuedKg.subtract(theoryKg), theoryKg);
        return new PowderVerdict(run, theoryKg, issuedKg, difference, percent(filmKg, issuedKg));
    }

    private static BigDecimal percent(BigDecimal part, BigDecimal whole) {
        return part.multiply(HUNDRED).divide(whole, MathContext.DECIMAL128);
    }

    public boolean unusual() {
        return differencePercent.abs().compareTo(BigDecimal.valueOf(USUAL_PERCENT)) > 0 || hardlyPossible();
    }

    /** Whether more of it would have ended on the parts than ever does. */
    public boolean hardlyPossible() {
        return onPartsPercent.compareTo(BigDecimal.valueOf(MOST_ON_PARTS_PERCENT)) > 0;
    }

    Stream<Finding> findings() {
        if (!unusual()) {
            return Stream.of();
        }
        boolean more = differencePercent.signum() > 0;
        FilmFinding kind = hardlyPossible()
                ? FilmFinding.POWDER_HARDLY_POSSIBLE
                : more ? FilmFinding.POWDER_ABOVE_THEORETICAL : FilmFinding.POWDER_BELOW_THEORETICAL;
        return Stream.of(Finding.of(
                kind,
                "run " + run.number(),
                "run",
                run.number(),
                "powder",
                run.powder(),
                "issued",
                issuedKg,
                "theoretical",
                theoryKg.setScale(3, RoundingMode.HALF_UP),
                "percent",
                differencePercent.setScale(1, RoundingMode.HALF_UP),
                "onParts",
                onPartsPercent.setScale(0, RoundingMode.HALF_UP),
                "most",
                MOST_ON_PARTS_PERCENT));
    }
}
