package boltlore.catalogue;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A curing oven of the workshop.
 *
 * @param fillPercent share of the inner volume that hung parts may take up with their air gaps
 * @param sectionRatio times that the slowest section of a piece may be as thick as that of another in the same load, from
 *     1, or null where all may hang together
 * @param minutesBesideCure to hang, heat up, cool down and take off one load
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
        @Nullable TooLarge tooLarge) {

    public Oven(
            String name,
            String says,
            EnvelopeMm inside,
            int hooks,
            BigDecimal loadKg,
            BigDecimal loadAreaM2,
            BigDecimal fillPercent) {
        this(name, says, inside, hooks, loadKg, loadAreaM2, fillPercent, null, 0, null);
    }
}
