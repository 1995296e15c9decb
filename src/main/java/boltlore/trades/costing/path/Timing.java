package boltlore.trades.costing.path;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * When a part must be on its way, in calendar days before the kit ships.
 *
 * @param readyDays by then it must lie ready for what it goes into
 * @param startDays by then it must be ordered or released; never less than readyDays
 */
public record Timing(int readyDays, int startDays) {

    /** The earlier of both, for a part that stands in several places. */
    public Timing earlier(Timing other) {
        return startDays >= other.startDays ? this : other;
    }

    public Optional<LocalDate> readyBy(@Nullable LocalDate due) {
        return Optional.ofNullable(due).map(date -> date.minusDays(readyDays));
    }

    public Optional<LocalDate> startBy(@Nullable LocalDate due) {
        return Optional.ofNullable(due).map(date -> date.minusDays(startDays));
    }
}
