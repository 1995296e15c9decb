package boltlore.trades.picking;

import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Spare small fixings in each bag: 5 % rounded up, at least one, for threads up to M8 and the washers that come with
 * them, and for self-locking nuts of any size, which are used once. Larger bolts are counted out one by one and not lost.
 * Common practice, no source.
 */
final class Spares {

    private static final BigDecimal SHARE = new BigDecimal("0.05");
    private static final BigDecimal LARGEST_THREAD_MM = new BigDecimal("8");
    private static final Pattern METRIC = Pattern.compile("M([0-9]+(?:\\.[0-9]+)?)(?:x.*)?");

    private final Set<PartNumber> small = new TreeSet<>();

    Spares(Stream<Part> picked) {
        picked.forEach(fixing -> {
            if (isSmallFixing(fixing)) {
                small.add(fixing.number());
                fixing.needs().stream().map(Need::part).forEach(small::add);
            } else if (isUsedOnce(fixing)) {
                small.add(fixing.number());
            }
        });
    }

    /** Spares for one bag that holds so many of the part; none for what is no small fixing. */
    BigDecimal inBag(Part part, BigDecimal quantity) {
        boolean counted = !Units.measured(part.unit()) && quantity.signum() > 0;
        return counted && small.contains(part.number()) ? add(quantity) : BigDecimal.ZERO;
    }

    /** The larger of one and 5 % rounded up. */
    private static BigDecimal add(BigDecimal quantity) {
        return quantity.multiply(SHARE).setScale(0, RoundingMode.CEILING).max(BigDecimal.ONE);
    }

    /** A nut that was turned off again has lost what makes it hold. */
    private static boolean isUsedOnce(Part part) {
        return part.fixing() != null && part.fixing().prevailing() != null;
    }

    private static boolean isSmallFixing(Part part) {
        if (part.fixing() == null) {
            return false;
        }
        Matcher thread = METRIC.matcher(part.fixing().thread());
        return thread.matches() && new BigDecimal(thread.group(1)).compareTo(LARGEST_THREAD_MM) <= 0;
    }
}
