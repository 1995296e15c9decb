package boltlore.catalogue.json;

import boltlore.catalogue.BuildDates;
import boltlore.json.Spot;
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
        backwards.forEach(dates -> fault(
                dates,
                reading,
                "from " + dates.from() + " to " + dates.to(),
                "an end after the beginning",
                "Swap the two."));
        if (backwards.isEmpty()) {
            sequence(all.stream().sorted(BY_BEGIN).toList(), reading);
        }
    }

    private static void sequence(List<BuildDates> dates, Reading reading) {
        for (int i = 0; i < dates.size(); i++) {
            BuildDates each = dates.get(i);
            if (i == 0) {
                open(each, each.from() != null, "from", "earliest", reading);
            } else {
                neighbours(dates.get(i - 1), each, reading);
            }
            if (i == dates.size() - 1) {
                open(each, each.to() != null, "to", "latest", reading);
            }
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
        Spot spot = reading.places().of(dates);
        reading.faults().add(spot.fault(found, expected, advice));
    }
}
