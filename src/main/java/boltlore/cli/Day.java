package boltlore.cli;

import boltlore.json.Values;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a day as people give it on the command line: year, month and day (ISO 8601). */
final class Day implements ITypeConverter<LocalDate> {

    private static final Pattern WRITTEN = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

    @Override
    public LocalDate convert(String written) {
        LocalDate day = WRITTEN.matcher(written).matches() ? day(written) : null;
        if (day == null) {
            throw new TypeConversionException("'" + written + "' is not a date: write it as 2026-06-01");
        }
        if (!Values.isSensible(day)) {
            throw new TypeConversionException(
                    "the year of '" + written + "' is not from " + Values.FIRST_YEAR + " to " + Values.LAST_YEAR);
        }
        return day;
    }

    private static @Nullable LocalDate day(String written) {
        try {
            return LocalDate.parse(written);
        } catch (DateTimeParseException none) {
            return null;
        }
    }
}
