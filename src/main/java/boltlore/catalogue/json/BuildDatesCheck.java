package boltlore.catalogue.json;

import boltlore.catalogue.BuildDates;
import boltlore.json.SourceLocation;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Build dates must settle an option for every day there ever was, and for no day twice. */
final class BuildDatesCheck {

    private static final Comparator<BuildDates> BY_BEGIN =
            Comparator.comparing(BuildDates::from, Comparator.nullsFirst(Comparator.naturalOrder()));

    private BuildDatesCheck() {}

    static void check(List<BuildDates> all, Reading reading) {
        List<BuildDates> backwards =
                all.stream().filter(BuildDatesCheck::isBackwards).toList();
        backwards.forEach(dates -> backwards(dates, reading));
        if (backwards.isEmpty()) {
            sequence(all.stream().sorted(BY_BEGIN).toList(), reading);
        }
    }

    private static void backwards(BuildDates dates, Reading reading) {
        String found = "from " + dates.from() + " to " + dates.to();
        fault(dates, reading, found, "an end after the beginning", "Swap the two.");
    }

    private static void sequence(List<BuildDates> dates, Reading reading) {
        for (int i = 1; i < dates.size(); i++) {
            neighbours(dates.get(i - 1), dates.get(i), reading);
        }
        if (!dates.isEmpty()) {
            BuildDates first = dates.get(0);
            BuildDates last = dates.get(dates.size() - 1);
            open(first, first.from() != null, "from", "earliest", reading);
            open(last, last.to() != null, "to", "latest", reading);
        }
    }

    private static boolean isBackwards(BuildDates dates) {
        return dates.from() != null && dates.to() != null && dates.to().isBefore(dates.from());
    }

    private static void open(BuildDates dates, boolean closed, String key, String which, Reading reading) {
        if (closed) {
            fault(
                    dates,
                    reading,
                    "'" + key + "' on '" + dates.value() + "', which is the " + which,
                    "no '" + key + "' there, so that every build date is settled",
                    "Remove it.");
        }
    }

    private static void neighbours(BuildDates before, BuildDates after, Reading reading) {
        LocalDate end = before.to();
        LocalDate begin = after.from();
        if (end == null || begin == null || !begin.isAfter(end)) {
            String found = "'" + after.value() + "' " + from(begin) + " beside '" + before.value() + "' " + to(end);
            fault(after, reading, found, "no day in two of them", "Let one end the day before the other begins.");
        } else if (!begin.equals(end.plusDays(1))) {
            String found = "'" + after.value() + "' " + from(begin) + " after '" + before.value() + "' " + to(end);
            fault(after, reading, found, "no day between them", "Begin on " + end.plusDays(1) + ".");
        }
    }

    private static String from(@Nullable LocalDate begin) {
        return begin == null ? "from the earliest day" : "from " + begin;
    }

    private static String to(@Nullable LocalDate end) {
        return end == null ? "to the latest day" : "to " + end;
    }

    private static void fault(BuildDates dates, Reading reading, String found, String expected, String advice) {
        SourceLocation location = reading.sources().of(dates);
        reading.faults().add(location.fault(found, expected, advice));
    }
}
