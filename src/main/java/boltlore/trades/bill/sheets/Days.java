package boltlore.trades.bill.sheets;

import boltlore.report.TableSpec;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Dates back from the day the kit is due, or the days before it where no day is told. */
final class Days {

    private Days() {}

    static <R> TableSpec<R> add(
            TableSpec<R> spec,
            String key,
            String heading,
            String before,
            @Nullable LocalDate due,
            Function<R, Optional<LocalDate>> day,
            Function<R, Integer> days) {
        return due == null
                ? spec.whole(key, before + " before the kit is due", "days", days::apply)
                : spec.date(key, heading, row -> day.apply(row).orElse(null));
    }
}
