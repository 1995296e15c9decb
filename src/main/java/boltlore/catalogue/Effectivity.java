package boltlore.catalogue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which orders something holds for, by the day on which they were placed and by the running number of the base vehicle's
 * chassis. Both ends are included; a null end is open.
 */
public record Effectivity(
        @Nullable LocalDate from,
        @Nullable LocalDate until,
        @Nullable Integer fromChassis,
        @Nullable Integer untilChassis) {

    /** For every order. */
    public static final Effectivity ALWAYS = new Effectivity(null, null, null, null);

    public boolean isAlways() {
        return equals(ALWAYS);
    }

    /** By dates alone. */
    public static Effectivity of(@Nullable LocalDate from, @Nullable LocalDate until) {
        return new Effectivity(from, until, null, null);
    }

    public boolean holdsOn(LocalDate placed) {
        return (from == null || !placed.isBefore(from)) && (until == null || !placed.isAfter(until));
    }

    public boolean holdsFor(int chassis) {
        return (fromChassis == null || chassis >= fromChassis) && (untilChassis == null || chassis <= untilChassis);
    }

    /** The condition together with when this holds; the family's scales are cut at each of its ends. */
    public Condition with(Condition when, List<EffectivityScale> scales) {
        List<Condition> all = new ArrayList<>();
        for (EffectivityScale scale : scales) {
            Integer first = first(scale.by());
            Integer last = last(scale.by());
            if (first != null || last != null) {
                all.add(scale.within(first, last));
            }
        }
        if (all.isEmpty()) {
            return when;
        }
        if (!when.isAlways()) {
            all.add(when);
        }
        return all.size() == 1 ? all.get(0) : new Condition.All(all);
    }

    /** Where it begins on that scale, in days since 1970-01-01 or as a number; null where it is open. */
    public @Nullable Integer first(EffectivityScale.By by) {
        return by == EffectivityScale.By.CHASSIS ? fromChassis : EffectivityScale.day(from);
    }

    public @Nullable Integer last(EffectivityScale.By by) {
        return by == EffectivityScale.By.CHASSIS ? untilChassis : EffectivityScale.day(until);
    }
}
