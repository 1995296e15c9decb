package boltlore.trades.coating;

import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import boltlore.catalogue.PowderCoat;
import boltlore.measure.Percent;
import java.math.BigDecimal;
import java.math.MathContext;

/** How much powder stays on a part, and how much is sprayed for it. All results in kg, unrounded. */
public final class FilmMass {

    private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

    private FilmMass() {}

    /** Area in m² that one kg covers when nothing is lost: 1000 / (SG × µm), since 1 m² × 1 µm of SG 1 weighs 1 g. */
    public static BigDecimal coverageM2PerKg(BigDecimal specificGravity, BigDecimal filmUm) {
        return THOUSAND.divide(specificGravity.multiply(filmUm), MathContext.DECIMAL128);
    }

    /** Cured film of one coat at its target: area in m² × SG × µm / 1000. */
    public static BigDecimal film(BigDecimal areaM2, PowderCoat coat) {
        return areaM2.multiply(coat.specificGravity())
                .multiply(BigDecimal.valueOf(coat.filmTargetUm()))
                .divide(THOUSAND, MathContext.DECIMAL128);
    }

    /** Powder to issue for one coat at its target film: film / utilisation. */
    public static BigDecimal issue(BigDecimal areaM2, PowderCoat coat) {
        return film(areaM2, coat).divide(Percent.fraction(coat.utilisationPercent()), MathContext.DECIMAL128);
    }

    /** Cured film of all coats on that area. A finish without powder coats adds nothing that is known. */
    public static BigDecimal film(BigDecimal areaM2, Finish finish) {
        return finish.coats().stream().map(coat -> film(areaM2, coat)).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Cured film on one of the part; nothing on a part that is not coated. */
    public static BigDecimal compute(Part part, Finish finish) {
        CoatingSpec coat = part.coat();
        return coat == null ? BigDecimal.ZERO : film(coat.areaM2(), finish);
    }
}
