package boltlore.cli;

import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a duration as people write it: 500ms, 30s, 5m. */
final class Within implements ITypeConverter<Duration> {

    private static final Pattern WRITTEN = Pattern.compile("(\\d{1,9})(ms|s|m)");

    @Override
    public Duration convert(String text) {
        Matcher matcher = WRITTEN.matcher(text);
        if (!matcher.matches()) {
            throw new TypeConversionException("'" + text + "' is no duration; write 500ms, 30s or 5m");
        }
        long number = Long.parseLong(matcher.group(1));
        String unit = matcher.group(2);
        return unit.equals("ms")
                ? Duration.ofMillis(number)
                : unit.equals("s") ? Duration.ofSeconds(number) : Duration.ofMinutes(number);
    }
}
