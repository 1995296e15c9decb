package boltlore.asking;

import boltlore.catalogue.BuildDate;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A day as people say it: as 1968-05-20 (ISO 8601), or with the day in front and points between, as 20.05.1968. */
public final class SaidDay {

    public static final String EXPECTED = "a date, as 2027-03-12";
    public static final String BUILT_EXPECTED = "a day, a month or a year, as 1968-05-20, 1968-05 or 1968";

    private static final Pattern POINTS = Pattern.compile("(?:([0-9]{1,2})\\.\\s?)?([0-9]{1,2})\\.\\s?([0-9]{4})");

    private SaidDay() {}

    /** When a vehicle was built; empty where it is no day, month or year. */
    public static Optional<BuildDate> built(String said) {
        Matcher points = POINTS.matcher(said);
        if (!points.matches()) {
            return BuildDate.read(said);
        }
        String month = points.group(3) + "-" + two(points.group(2));
        return BuildDate.read(points.group(1) == null ? month : month + "-" + two(points.group(1)));
    }

    private static String two(String digits) {
        return digits.length() == 1 ? "0" + digits : digits;
    }

    /** Empty where it is no single day. */
    public static Optional<LocalDate> day(String said) {
        return built(said).filter(BuildDate::isDay).map(BuildDate::first);
    }
}
