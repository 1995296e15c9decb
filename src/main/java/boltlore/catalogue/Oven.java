package boltlore.catalogue;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A curing oven of the workshop.
 *
 * @param fillPercent share of the inner volume that hung parts may take up with their air gaps
 * @param sectionRatio times that the slowest section of a piece may be as thick as that of another in the same load, from
 *     1, or null where all may hang together
 * @param minutesBesideCure to hang, cool down and take off one load, and to heat it up where nobody says how its sections do
 * @param heatUpMinPerMm minutes that a millimetre of the thickest section takes to reach metal temperature, or 0 where
 *     nobody says
 * @param rails that pieces hang from, along the oven's length and evenly across its width, or 0 where this is not told
 * @param tooLarge who coats what does not go in, or null where nobody is named
 */
public record Oven(
        String name,
        String says,
        EnvelopeMm inside,
        int hooks,
        BigDecimal loadKg,
        BigDecimal loadAreaM2,
        BigDecimal fillPercent,
        @Nullable BigDecimal sectionRatio,
        int minutesBesideCure,
        int rails,
        @Nullable TooLarge tooLarge,
        BigDecimal heatUpMinPerMm) {

    /** Of which nobody says how its loads heat up. */
    public Oven(
            String name,
            String says,
            EnvelopeMm inside,
            int hooks,
            BigDecimal loadKg,
            BigDecimal loadAreaM2,
            BigDecimal fillPercent,
            @Nullable BigDecimal sectionRatio,
            int minutesBesideCure,
            int rails,
            @Nullable TooLarge tooLarge) {
        this(
                name,
                says,
                inside,
                hooks,
                loadKg,
                loadAreaM2,
                fillPercent,
                sectionRatio,
                minutesBesideCure,
                rails,
                tooLarge,
                BigDecimal.ZERO);
    }

    public Oven(
            String name,
            String says,
            EnvelopeMm inside,
            int hooks,
            BigDecimal loadKg,
            BigDecimal loadAreaM2,
            BigDecimal fillPercent) {
        this(name, says, inside, hooks, loadKg, loadAreaM2, fillPercent, null, 0, 0, null);
    }
}
