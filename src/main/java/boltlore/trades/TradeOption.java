package boltlore.trades;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.Values;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * An option of a trade's command.
 *
 * @param name as it is typed: '--supply'
 * @param label of its value in the help, empty for one that takes none
 * @param says one sentence for the help
 * @param several whether it may be given more than once
 * @param order whether it names the file of one more order, which is worked on with the others
 * @param read makes the value of what was typed; a fault says what was found and what is expected
 */
public record TradeOption<T>(
        String name,
        String label,
        String says,
        boolean several,
        boolean order,
        Function<List<String>, Outcome<T>> read) {

    /** An option with one value. */
    public static <T> TradeOption<T> of(String name, String label, String says, Function<String, Outcome<T>> read) {
        return new TradeOption<>(name, label, says, false, false, texts -> read.apply(texts.get(0)));
    }

    /** An option that is given or not. */
    public static TradeOption<Boolean> flag(String name, String says) {
        return new TradeOption<>(name, "", says, false, false, texts -> Outcome.sound(true));
    }

    /** A date as 2026-06-01 (ISO 8601). */
    public static TradeOption<LocalDate> date(String name, String says) {
        return of(name, "DATE", says, text -> dated(name, text));
    }

    /** Reads a date as people type it. */
    public static Outcome<LocalDate> dated(String option, String text) {
        try {
            LocalDate day = LocalDate.parse(text);
            if (Values.isSensible(day)) {
                return Outcome.sound(day);
            }
            String years = "a year from " + Values.FIRST_YEAR + " to " + Values.LAST_YEAR;
            return Outcome.faulty(Fault.of(option, "the year of '" + text + "'", years, ""));
        } catch (DateTimeParseException none) {
            return Outcome.faulty(Fault.of(option, "'" + text + "', which is not a date", "such as 2026-06-01", ""));
        }
    }

    /** One more order; its file is typed, and the value is the order's name as soon as the file is read. */
    public static TradeOption<String> order(String name, String says) {
        return new TradeOption<>(name, "ORDER", says, false, true, texts -> Outcome.sound(texts.get(0)));
    }

    /** A file, which is there or will be written. */
    public static TradeOption<Path> file(String name, String says) {
        return of(name, "FILE", says, text -> {
            try {
                return Outcome.sound(Path.of(text));
            } catch (InvalidPathException none) {
                return Outcome.faulty(Fault.of(name, "'" + text + "'", "the path of a file", ""));
            }
        });
    }

    /** What was typed and cannot be read. */
    public <R> Outcome<R> refused(String found, String expected) {
        return Outcome.faulty(Fault.of(name, found, expected, ""));
    }

    /** The options' values that were given with a command. */
    public static final class Given {

        public static final Given NONE = new Given(Map.of());

        private final Map<TradeOption<?>, Object> values;

        private Given(Map<TradeOption<?>, Object> values) {
            this.values = values;
        }

        /** All that was typed, read; faulty with everything that cannot be. */
        public static Outcome<Given> read(Map<TradeOption<?>, List<String>> typed) {
            Map<TradeOption<?>, Object> values = new HashMap<>();
            List<Outcome<Object>> all = typed.entrySet().stream()
                    .map(each -> each.getKey().read().apply(each.getValue()).<Object>then(value -> {
                        values.put(each.getKey(), value);
                        return Outcome.sound(value);
                    }))
                    .toList();
            return Outcome.all(all).then(sound -> Outcome.sound(new Given(values)));
        }

        @SuppressWarnings("unchecked") // what stands under an option was made by its own reader
        public <T> Optional<T> get(TradeOption<T> option) {
            return Optional.ofNullable((T) values.get(option));
        }

        /** With one more option, or with another value of it. */
        public <T> Given with(TradeOption<T> option, T value) {
            Map<TradeOption<?>, Object> more = new HashMap<>(values);
            more.put(option, value);
            return new Given(more);
        }

        public boolean has(TradeOption<?> option) {
            return values.containsKey(option);
        }
    }
}
