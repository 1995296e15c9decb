package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What the workshop knows of a battery that it ships.
 *
 * @param strongCase whether its own case is strong and resists impact
 * @param smallRun whether it is a pre-production prototype carried for testing, or of a run of at most 100
 * @param testSummary where its test summary is kept, or empty
 * @param chargePercent state of charge at which it leaves the workshop, or null where nobody says
 */
public record ShippedBattery(
        PartNumber part,
        boolean strongCase,
        boolean smallRun,
        String testSummary,
        @Nullable BigDecimal chargePercent) {

    /** In place of the number of what is no part. */
    public static final PartNumber NO_PART = new PartNumber("-");

    /** What people write where they have nothing to write. */
    private static final Set<String> NOTHING = Set.of(
            "",
            "na",
            "none",
            "nil",
            "no",
            "tbd",
            "tba",
            "todo",
            "unknown",
            "pending",
            "x",
            "xx",
            "xxx",
            "keine",
            "keiner",
            "nein",
            "unbekannt",
            "ka",
            "folgt",
            "offen",
            "fehlt",
            "aucun",
            "aucune",
            "néant",
            "inconnu",
            "sans",
            "non");

    /** A dash or 'n/a' is no place where anything is kept. */
    public ShippedBattery {
        String plain = testSummary.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "");
        testSummary = NOTHING.contains(plain) ? "" : testSummary;
    }
}
