package boltlore.cli;

import boltlore.book.By;
import boltlore.book.db.Place;
import boltlore.faults.Outcome;
import boltlore.json.TextShape;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Which book a command works with, and who works. */
final class BookOption {

    private static final int SHOWN = 60;

    static final String BY_VARIABLE = "BOLTLORE_BY";
    static final String DESK_VARIABLE = "BOLTLORE_DESK";

    @Option(
            names = "--book",
            paramLabel = "FILE|URL",
            description = "The book: a file, or the URL of a server as jdbc:postgresql://host/name. Without it"
                    + " BOLTLORE_BOOK says, or else boltlore/book.db in your data folder (~/.local/share).")
    private @Nullable String book;

    @Option(
            names = "--by",
            paramLabel = "NAME",
            description = "Who does it; without it BOLTLORE_BY says, or else the name of your account.")
    private @Nullable String name;

    @Option(
            names = "--clock",
            paramLabel = "TIME",
            converter = Clock.class,
            description = "Work as if it were that time, as 2027-07-30T09:00:00Z; for drills in a copy of the book.")
    private @Nullable Instant clock;

    /** A moment as people type it. */
    static final class Clock implements ITypeConverter<Instant> {
        @Override
        public Instant convert(String typed) {
            try {
                return Instant.parse(typed);
            } catch (DateTimeParseException none) {
                throw new TypeConversionException(
                        "'" + shortened(typed) + "'; expected a time such as 2027-07-30T09:00:00Z (ISO 8601)");
            }
        }
    }

    /** As much of what was typed as one must see to find it. */
    static String shortened(String typed) {
        return typed.length() > SHOWN ? typed.substring(0, SHOWN) + "…" : typed;
    }

    Outcome<Place> place() {
        return Place.of(book, System.getenv());
    }

    Outcome<By> by() {
        Map<String, String> environment = System.getenv();
        String account = System.getProperty("user.name", "somebody");
        String who = name != null ? name : environment.getOrDefault(BY_VARIABLE, account);
        String desk = environment.getOrDefault(
                DESK_VARIABLE, environment.getOrDefault("HOSTNAME", environment.getOrDefault("COMPUTERNAME", "desk")));
        return Said.text("--by", who, TextShape.LINE)
                .then(person -> Said.text(DESK_VARIABLE, desk, TextShape.LINE)
                        .then(at -> Outcome.sound(new By(now(), today(), at, person))));
    }

    LocalDate today() {
        return LocalDate.ofInstant(now(), ZoneId.systemDefault());
    }

    private Instant now() {
        return clock == null ? Instant.now() : clock;
    }
}
