package boltlore.order;

import boltlore.catalogue.BuildDate;
import boltlore.catalogue.EffectivityScale;
import boltlore.choices.Choices;
import boltlore.measure.OptionName;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import org.jspecify.annotations.Nullable;

/**
 * One order as it was placed.
 *
 * @param name the order's number; also the name of its folder under exports
 * @param partner name of the partner workshop, or empty
 * @param language language of the papers that leave the workshop
 * @param placed date of the order, printed on the sheets; it decides which lines of the kit are in effect
 * @param firm choices that no repair may touch
 * @param rank the other options, most important to the customer first
 * @param measuredMm dimensions of the family that were measured on this vehicle, by name
 * @param settledByDate options whose value was not chosen but follows from the donor's build date, the order's date or the
 *     chassis number
 * @param chassis chassis number of the donor, which ends with its running number; empty where nobody has said
 * @param addresses to whom crates and invoice go
 */
public record Order(
        String name,
        String family,
        String customer,
        String partner,
        String language,
        @Nullable BuildDate donorBuilt,
        @Nullable LocalDate placed,
        @Nullable LocalDate due,
        Choices choices,
        SortedSet<OptionName> settledByDate,
        SortedSet<OptionName> firm,
        List<OptionName> rank,
        LeftOut leftOut,
        List<Waiver> waived,
        List<Extra> extra,
        String notes,
        OrderTerms terms,
        Map<String, BigDecimal> measuredMm,
        String chassis,
        OrderAddresses addresses) {

    /** Most digits of the running number at the end of a chassis number. */
    public static final int RUNNING_DIGITS = 9;

    /** Where it lies on that scale: in days since 1970-01-01, or the running number; null where the order does not say. */
    public @Nullable Integer at(EffectivityScale.By by) {
        if (by == EffectivityScale.By.CHASSIS) {
            int digits = chassis.length();
            while (digits > 0 && Character.isDigit(chassis.charAt(digits - 1))) {
                digits--;
            }
            return digits == chassis.length() ? null : Integer.valueOf(chassis.substring(digits));
        }
        return placed == null ? null : Math.toIntExact(placed.toEpochDay());
    }

    /** An order of which nothing is known yet but these choices. */
    public static Order draft(Choices choices) {
        return new OrderBuilder(choices).build();
    }

    /** The same order with other choices. */
    public Order withChoices(Choices other) {
        return new OrderBuilder(this).choices(other).build();
    }

    /** The same order, with other brackets left out. */
    public Order withLeftOut(LeftOut other) {
        return new OrderBuilder(this).leftOut(other).build();
    }
}
