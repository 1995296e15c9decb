package boltlore.checking;

import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Holes that a metric bolt goes through or into.
 *
 * @param tapped tapping drill of the coarse thread, in mm: Mechanical Engineer's Data Handbook, 8.2.4 ISO metric nut and
 *     bolt sizes
 * @param fine least clearance hole, in mm: ISO 273, fine series, after the public table of engineeringhardware.com
 * @param coarse largest clearance hole, in mm: ISO 273, coarse series, same table
 */
record MetricHoles(BigDecimal tapped, BigDecimal fine, BigDecimal coarse) {

    private static final Pattern METRIC = Pattern.compile("M([0-9]+)(?:x[0-9.]+)?");

    private static final Map<String, MetricHoles> BY_DIAMETER = Map.of(
            "3", of("2.5", "3.2", "3.6"),
            "4", of("3.3", "4.3", "4.8"),
            "5", of("4.2", "5.3", "5.8"),
            "6", of("5", "6.4", "7"),
            "8", of("6.8", "8.4", "10"),
            "10", of("8.5", "10.5", "12"),
            "12", of("10.2", "13", "14.5"),
            "16", of("14", "17", "18.5"),
            "20", of("17.5", "21", "24"));

    private static MetricHoles of(String tapped, String fine, String coarse) {
        return new MetricHoles(new BigDecimal(tapped), new BigDecimal(fine), new BigDecimal(coarse));
    }

    /** For a thread such as M8 or M8x1; none for what is not in the tables. */
    static Optional<MetricHoles> forThread(String thread) {
        Matcher metric = METRIC.matcher(thread);
        return metric.matches() ? Optional.ofNullable(BY_DIAMETER.get(metric.group(1))) : Optional.empty();
    }

    /** A clearance hole of any series, or a hole drilled for the thread itself. */
    boolean suit(BigDecimal diameterMm) {
        return diameterMm.compareTo(tapped) == 0 || clear(diameterMm);
    }

    boolean clear(BigDecimal diameterMm) {
        return diameterMm.compareTo(fine) >= 0 && diameterMm.compareTo(coarse) <= 0;
    }

    String say() {
        return Digits.plain(fine) + " to " + Digits.plain(coarse) + " mm clear, or " + Digits.plain(tapped)
                + " mm tapped";
    }
}
