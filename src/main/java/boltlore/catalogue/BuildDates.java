package boltlore.catalogue;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** The build dates, both ends included, that settle an option to this value; a null end is open. */
public record BuildDates(
        String value, @Nullable LocalDate from, @Nullable LocalDate to) {

    public boolean holds(LocalDate built) {
        return (from == null || !built.isBefore(from)) && (to == null || !built.isAfter(to));
    }

    /** Whether every day that it may be is among these. */
    public boolean holds(BuildDate built) {
        return holds(built.first()) && holds(built.last());
    }

    /** Whether any day that it may be is among these. */
    public boolean meets(BuildDate built) {
        return (from == null || !built.last().isBefore(from))
                && (to == null || !built.first().isAfter(to));
    }
}
