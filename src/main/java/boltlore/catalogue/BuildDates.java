package boltlore.catalogue;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** The build dates, both ends included, that settle an option to this value; a null end is open. */
public record BuildDates(
        String value, @Nullable LocalDate from, @Nullable LocalDate to) {

    public boolean holds(LocalDate built) {
        return (from == null || !built.isBefore(from)) && (to == null || !built.isAfter(to));
    }
}
