package boltlore.trades.bill.sheets;

import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.trades.costing.path.Timing;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** Writes a date back from the day the kit is due, or the days before it where no day is told. */
final class Days {

    private Days() {}

    /** A column of dates, or of days before the kit is due where no day is told. */
    static Column column(String key, String heading, String before, @Nullable LocalDate due) {
        return due == null
                ? Column.whole(key, before + " before the kit is due").in("days")
                : Column.date(key, heading);
    }

    static void startBy(RowBuilder row, String column, Timing timing, @Nullable LocalDate due) {
        timing.startBy(due).ifPresentOrElse(day -> row.put(column, day), () -> row.put(column, timing.startDays()));
    }

    static void readyBy(RowBuilder row, String column, Timing timing, @Nullable LocalDate due) {
        timing.readyBy(due).ifPresentOrElse(day -> row.put(column, day), () -> row.put(column, timing.readyDays()));
    }
}
