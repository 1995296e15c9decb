package boltlore.trades.fixings;

import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;

/**
 * The ring that a head presses on.
 *
 * @param outerMm where it ends
 * @param holeMm where the hole begins
 */
record HeadFace(BigDecimal outerMm, BigDecimal holeMm) {

    private static final MathContext DIGITS = MathContext.DECIMAL64;
    private static final BigDecimal QUARTER_PI = new BigDecimal("0.7853981633974483");
    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final int MICROMETRES = 3;

    /**
     * Hexagon head and clearance hole, by diameter in mm. M6 to M12 give the mean diameters that are published with the
     * torques, the other metric ones from memory (DIN 931, ISO 273 medium). Inch sizes: least width across flats of hexagon
     * cap screws (ASME B18.2.1, after a public table) times 0.95, and normal clearance holes (ASME B18.2.8), both from memory
     * where no table was at hand.
     */
    private static final Map<String, HeadFace> BY_DIAMETER = Map.ofEntries(
            mm("3", "4.6", "3.4"),
            mm("4", "5.9", "4.5"),
            mm("5", "6.9", "5.5"),
            mm("6", "8.9", "6.6"),
            mm("8", "11.6", "9"),
            mm("10", "14.6", "11"),
            mm("12", "16.6", "13.5"),
            mm("14", "19.6", "15.5"),
            mm("16", "22.5", "17.5"),
            mm("18", "25.3", "20"),
            mm("20", "28.2", "22"),
            mm("22", "31.7", "24"),
            mm("24", "33.6", "26"),
            inch("6.35", "0.428", "0.281"),
            inch("7.938", "0.489", "0.344"),
            inch("9.525", "0.551", "0.406"),
            inch("11.113", "0.612", "0.469"),
            inch("12.7", "0.736", "0.562"),
            inch("14.288", "0.798", "0.625"),
            inch("15.875", "0.922", "0.688"),
            inch("19.05", "1.100", "0.812"),
            inch("22.225", "1.285", "0.938"),
            inch("25.4", "1.469", "1.094"));

    private static Map.Entry<String, HeadFace> mm(String diameter, String outer, String hole) {
        return Map.entry(diameter, new HeadFace(new BigDecimal(outer), new BigDecimal(hole)));
    }

    private static Map.Entry<String, HeadFace> inch(String diameterMm, String flats, String hole) {
        BigDecimal face = new BigDecimal("25.4").multiply(new BigDecimal("0.95"));
        return Map.entry(
                diameterMm,
                new HeadFace(
                        new BigDecimal(flats).multiply(face), new BigDecimal(hole).multiply(new BigDecimal("25.4"))));
    }

    static Optional<HeadFace> under(ScrewThread thread) {
        String diameter = Digits.plain(thread.diameterMm().setScale(MICROMETRES, RoundingMode.HALF_UP));
        return Optional.ofNullable(BY_DIAMETER.get(diameter));
    }

    BigDecimal meanMm() {
        return outerMm.add(holeMm).divide(TWO, DIGITS);
    }

    /** In mm². */
    BigDecimal areaMm2() {
        return QUARTER_PI.multiply(outerMm.pow(2).subtract(holeMm.pow(2)));
    }
}
