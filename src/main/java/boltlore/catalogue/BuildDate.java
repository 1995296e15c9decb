package boltlore.catalogue;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * When a base vehicle was built, as exactly as somebody knows it: a day, a month or a year (ISO 8601, as 1968-05-20,
 * 1968-05 or 1968).
 *
 * @param first the first day that it may be
 * @param last the last one; the first itself where the day is known
 */
public record BuildDate(LocalDate first, LocalDate last) {

    private static final Pattern WRITTEN = Pattern.compile("[0-9]{4}(-[0-9]{2}){0,2}");
    private static final int YEAR = "1968".length();
    private static final int MONTH = "1968-05".length();

    public static BuildDate day(LocalDate day) {
        return new BuildDate(day, day);
    }

    /** Empty where the text is none of the three, or no such day exists. */
    public static Optional<BuildDate> read(String text) {
        if (!WRITTEN.matcher(text).matches()) {
            return Optional.empty();
        }
        try {
            if (text.length() == YEAR) {
                Year year = Year.parse(text);
                return Optional.of(new BuildDate(year.atDay(1), year.atDay(year.length())));
            }
            if (text.length() == MONTH) {
                YearMonth month = YearMonth.parse(text);
                return Optional.of(new BuildDate(month.atDay(1), month.atEndOfMonth()));
            }
            return Optional.of(day(LocalDate.parse(text)));
        } catch (DateTimeException none) {
            return Optional.empty();
        }
    }

    public boolean isDay() {
        return first.equals(last);
    }

    /** Whether all of it lies behind that day. */
    public boolean isAfter(LocalDate day) {
        return first.isAfter(day);
    }

    /** As it is written. */
    @Override
    public String toString() {
        if (isDay()) {
            return first.toString();
        }
        YearMonth month = YearMonth.from(first);
        return month.equals(YearMonth.from(last))
                ? month.toString()
                : Year.from(first).toString();
    }
}
