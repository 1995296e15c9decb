package boltlore.trades.testing;

import boltlore.catalogue.FoundState;
import boltlore.catalogue.Scale;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Whether a reading can be understood: a number in the right unit that the instrument can show, or a known state. */
final class ReadingCheck {

    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]{1,12}([.,][0-9]{1,40})?");

    /** Three digits behind a comma may be thousands, unless a 0 stands before it. */
    private static final Pattern TWO_WAYS = Pattern.compile("[+-]?0*[1-9][0-9]*,[0-9]{3}");

    /** Digits behind the point that count; more is the dust of a conversion between programs. */
    private static final int MOST_DECIMALS = 9;

    private static final Pattern DAY =
            Pattern.compile("([0-9]{4})-([0-9]{2})-([0-9]{2})|([0-9]{1,2})\\.([0-9]{1,2})\\.([0-9]{4})");

    private final Box box;
    private final Reading reading;
    private final String language;
    private final LocalDate today;
    private final List<Flaw> flaws = new ArrayList<>();

    ReadingCheck(Box box, Reading reading, String language, LocalDate today) {
        this.box = box;
        this.reading = reading;
        this.language = language;
        this.today = today;
    }

    List<Flaw> flaws() {
        return flaws;
    }

    /** Empty where something is wrong, which then stands among the flaws. */
    Optional<ParsedReading> parsed() {
        LocalDate on = on();
        signed(reading.instrument(), Flaw.Kind.NO_INSTRUMENT);
        signed(reading.by(), Flaw.Kind.NO_NAME);
        ParsedReading parsed = box.scale() == null ? state(on) : number(box.scale(), on);
        return flaws.isEmpty() ? Optional.ofNullable(parsed) : Optional.empty();
    }

    private void signed(String written, Flaw.Kind otherwise) {
        if (written.isBlank()) {
            flaws.add(Flaw.of(otherwise));
        }
    }

    private void flaw(Flaw.Kind kind, String found, String expected) {
        flaws.add(new Flaw(kind, found, expected));
    }

    private LocalDate on() {
        LocalDate day = day(reading.on()).orElse(null);
        if (day == null) {
            Flaw.Kind kind = reading.on().isBlank() ? Flaw.Kind.NO_DAY : Flaw.Kind.NOT_A_DAY;
            flaw(kind, reading.on(), "");
        } else if (day.isAfter(today)) {
            flaw(Flaw.Kind.DAY_TO_COME, day.toString(), today.toString());
        }
        return day == null ? LocalDate.EPOCH : day;
    }

    /** As ISO 8601 has it, or with points, as spreadsheet programs write it in many countries. */
    static Optional<LocalDate> day(String written) {
        Matcher matcher = DAY.matcher(written);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int first = matcher.group(1) != null ? 1 : 4;
        int year = Integer.parseInt(matcher.group(first == 1 ? 1 : 6));
        int month = Integer.parseInt(matcher.group(first == 1 ? 2 : 5));
        try {
            return Optional.of(LocalDate.of(year, month, Integer.parseInt(matcher.group(first == 1 ? 3 : 4))));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }

    private @Nullable ParsedReading number(Scale scale, LocalDate on) {
        unit(scale.unit());
        if (!NUMBER.matcher(reading.value()).matches()) {
            flaw(Flaw.Kind.NOT_A_NUMBER, reading.value(), scale.unit());
            return null;
        }
        if (TWO_WAYS.matcher(reading.value()).matches()) {
            flaw(Flaw.Kind.NUMBER_TWO_WAYS, reading.value(), reading.value().replace(',', '.'));
            return null;
        }
        BigDecimal number = plain(new BigDecimal(reading.value().replace(',', '.')));
        if (!scale.shows(number)) {
            String range = Digits.plain(scale.from()) + " … " + Digits.plain(scale.to()) + " " + scale.unit();
            flaw(Flaw.Kind.OUT_OF_RANGE, Digits.plain(number), range);
        }
        return new ParsedReading.Figured(number, on);
    }

    private static BigDecimal plain(BigDecimal number) {
        return number.scale() > MOST_DECIMALS ? number.setScale(MOST_DECIMALS, RoundingMode.HALF_UP) : number;
    }

    /** A small m is a thousandth and a large one a million, so letters must be as they are. */
    private void unit(String wanted) {
        String written =
                reading.unit().replace("\u2126", "ohm").replace("Ω", "ohm").replace("°", "deg");
        if (written.isBlank()) {
            flaw(Flaw.Kind.NO_UNIT, "", wanted);
        } else if (!written.equals(wanted)) {
            flaw(Flaw.Kind.OTHER_UNIT, reading.unit(), wanted);
        }
    }

    private @Nullable ParsedReading state(LocalDate on) {
        String written = reading.value().toLowerCase(Locale.ROOT);
        for (FoundState state : FoundState.values()) {
            if (written.equals(state.written()) || written.equals(state.says().in(language))) {
                return new ParsedReading.State(state, on);
            }
        }
        flaw(Flaw.Kind.UNKNOWN_STATE, reading.value(), knownStates());
        return null;
    }

    private String knownStates() {
        return Arrays.stream(FoundState.values())
                .map(state -> state.says().in(language))
                .collect(Collectors.joining(", "));
    }
}
