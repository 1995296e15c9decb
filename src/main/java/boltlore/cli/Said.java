package boltlore.cli;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.Faults;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import boltlore.json.TextShape;
import boltlore.json.Values;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.BiFunction;

/** Texts from the command line by the same rules as texts in files: printable, of their look, not endless. */
final class Said {

    private Said() {}

    /** A text of that look; messages name the option. */
    static Outcome<String> text(String option, String said, TextShape shape) {
        return checked(option, said, (json, faults) -> Values.text(json, shape, faults));
    }

    /** A sentence or some, or none at all. */
    static Outcome<String> sentence(String option, String said) {
        return said.isBlank() ? Outcome.sound("") : checked(option, said, Values::text);
    }

    /** As a JSON text each character is looked at, as those of files are. */
    private static Outcome<String> checked(
            String option, String said, BiFunction<Json, Faults, Optional<String>> reading) {
        String written = JsonOut.text(said).written();
        Outcome<String> text = JsonFile.parse(option, written.getBytes(StandardCharsets.UTF_8))
                .then(json -> {
                    Faults faults = new Faults();
                    String read = reading.apply(json, faults).orElse("");
                    return faults.orElse(read);
                });
        return text.faults().isEmpty()
                ? text
                : Outcome.faulty(text.faults().stream()
                        .map(fault -> Fault.of(option, fault.found(), fault.expected(), fault.advice()))
                        .toList());
    }
}
