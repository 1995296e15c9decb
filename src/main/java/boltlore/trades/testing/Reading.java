package boltlore.trades.testing;

/**
 * What somebody wrote into one box, as it stands there.
 *
 * @param box key of the box
 * @param instrument serial number of the instrument
 * @param by who measured
 * @param on day of measuring, as written
 * @param file where it was read from, with line and place
 */
public record Reading(
        String box,
        String value,
        String unit,
        String instrument,
        String by,
        String on,
        String file,
        int line,
        String place) {}
