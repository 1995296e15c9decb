package boltlore.cli;

import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a duration as people write it: 500ms, 30s, 5m; a week at most. */
final class Within implements ITypeConverter<Duration> {

    private static final Pattern WRITTEN = Pattern.compile("([0-9]{1,9})(ms|s|m)");
    private static final Duration LONGEST = Duration.ofDays(7);

    @Override
    public Duration convert(String text) {
        Matcher matcher = WRITTEN.matcher(text);
        if (!matcher.matches()) {
            throw new TypeConversionException("'" + text + "' is not a duration; write 500ms, 30s or 5m");
        }
        long number = Long.parseLong(matcher.group(1));
        String unit = matcher.group(2);
        Duration time = unit.equals("ms")
                ? Duration.ofMillis(number)
                : unit.equals("s") ? Duration.ofSeconds(number) : Duration.ofMinutes(number);
        if (time.compareTo(LONGEST) > 0) {
            throw new TypeConversionException(
                    "'" + text + "' is more than " + LONGEST.toMinutes() + "m, which is a week");
        }
        return time;
    }
}
