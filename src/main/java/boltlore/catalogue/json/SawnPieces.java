package boltlore.catalogue.json;

import boltlore.catalogue.BarStock;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Cut;
import boltlore.catalogue.Material;
import boltlore.catalogue.Part;
import boltlore.json.SourceLocation;
import boltlore.measure.Digits;
import java.math.BigDecimal;

/** Every piece can be sawn from the bars that its material is bought in. */
final class SawnPieces {

    /** What tangents are off by, and no saw can cut. */
    private static final double DUST_MM = 1e-6;

    private final Catalogue catalogue;
    private final Reading reading;

    SawnPieces(Catalogue catalogue, Reading reading) {
        this.catalogue = catalogue;
        this.reading = reading;
    }

    void check() {
        for (Part part : catalogue.parts().values()) {
            for (Cut cut : part.making().cuts()) {
                Material material = catalogue.materials().get(cut.material());
                if (material != null && material.bars() != null) {
                    check(cut, material.bars());
                }
            }
        }
    }

    private void check(Cut cut, BarStock bars) {
        String found = "a piece of " + mm(cut.lengthMm()) + " from '" + cut.material() + "'";
        if (cut.lengthMm().compareTo(bars.longestPieceMm()) > 0) {
            String longest = "at most " + mm(bars.longestPieceMm()) + ": the longest bar is "
                    + bars.longest().lengthMm() + " mm, its head trim "
                    + mm(bars.saw().headTrimMm()) + ", its held tail "
                    + mm(bars.saw().heldTailMm());
            fault(cut, found, longest, "Buy longer bars, or join it from shorter pieces.");
        } else if (cut.lengthMm().compareTo(bars.saw().kerfMm()) <= 0) {
            fault(cut, found, "longer than the saw's kerf of " + mm(bars.saw().kerfMm()), "");
        } else {
            ends(cut, bars, found);
        }
    }

    private void ends(Cut cut, BarStock bars, String found) {
        BigDecimal steepest = bars.saw().steepestDegrees();
        for (BigDecimal angle : cut.endAngles()) {
            if (angle.abs().compareTo(steepest) > 0) {
                String limit = "at most " + Digits.plain(steepest) + "°, which is as steep as its saw cuts";
                fault(cut, "an end of " + Digits.plain(angle) + "°", limit, "");
                return;
            }
        }
        if (cut.lengthMm().doubleValue() <= bars.acrossMm().doubleValue() * slope(cut) + DUST_MM) {
            fault(cut, found + " with both ends slanted", "a piece whose slants do not cross", "");
        }
    }

    /** How much shorter the short side is than the long one, for each mm across. */
    private static double slope(Cut cut) {
        double one = tan(cut.endAngles().get(0));
        double other = tan(cut.endAngles().get(1));
        return Math.max(Math.abs(one + other), Math.max(Math.abs(one), Math.abs(other)));
    }

    private static double tan(BigDecimal degrees) {
        return StrictMath.tan(StrictMath.toRadians(degrees.doubleValue()));
    }

    private void fault(Cut cut, String found, String expected, String advice) {
        SourceLocation location = reading.sources().of(cut);
        reading.faults().add(location.fault(found, expected, advice));
    }

    private static String mm(BigDecimal length) {
        return Digits.plain(length) + " mm";
    }
}
