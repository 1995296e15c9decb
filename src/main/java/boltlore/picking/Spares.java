package boltlore.picking;

import boltlore.catalogue.Part;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Spare small fixings in each bag: 5 % rounded up, at least one, for threads up to M8. Larger bolts are counted out one
 * by one and not lost. Common practice, no source.
 */
public final class Spares {

    private static final BigDecimal SHARE = new BigDecimal("0.05");
    private static final BigDecimal LARGEST_THREAD_MM = new BigDecimal("8");
    private static final Pattern METRIC = Pattern.compile("M([0-9]+(?:\\.[0-9]+)?)(?:x.*)?");

    private Spares() {}

    /** Spares for one bag that holds so many of the part; none for what is no small fixing. */
    public static BigDecimal inBag(Part part, BigDecimal quantity) {
        return isSmallFixing(part) && quantity.signum() > 0 ? of(quantity) : BigDecimal.ZERO;
    }

    /** The larger of one and 5 % rounded up. */
    static BigDecimal of(BigDecimal quantity) {
        return quantity.multiply(SHARE).setScale(0, RoundingMode.CEILING).max(BigDecimal.ONE);
    }

    private static boolean isSmallFixing(Part part) {
        if (part.fixing() == null || Units.measured(part.unit())) {
            return false;
        }
        Matcher thread = METRIC.matcher(part.fixing().thread());
        return thread.matches() && new BigDecimal(thread.group(1)).compareTo(LARGEST_THREAD_MM) <= 0;
    }
}
