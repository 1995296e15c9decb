package boltlore.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a day as people give it on the command line: year, month and day (ISO 8601). */
final class Day implements ITypeConverter<LocalDate> {

    @Override
    public LocalDate convert(String written) {
        try {
            return LocalDate.parse(written);
        } catch (DateTimeParseException none) {
            throw new TypeConversionException("'" + written + "' is no day: write it as 2026-06-01");
        }
    }
}
