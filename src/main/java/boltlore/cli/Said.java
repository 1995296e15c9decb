package boltlore.cli;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.Faults;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import boltlore.json.TextShape;
import boltlore.json.Values;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Texts from the command line by the same rules as texts in files: printable, of their look, not endless. */
final class Said {

    private Said() {}

    /** A text of that look; messages name the option. */
    static Outcome<String> text(String option, String said, TextShape shape) {
        Faults faults = new Faults();
        return parsed(option, said).then(json -> faults.orElse(
                        Values.text(json, shape, faults).orElse("")))
                .then(text -> faults.orElse(text));
    }

    /** A sentence or some, or none at all. */
    static Outcome<String> sentence(String option, String said) {
        if (said.isBlank()) {
            return Outcome.sound("");
        }
        Faults faults = new Faults();
        return parsed(option, said).then(json -> {
            String text = Values.text(json, faults).orElse("");
            return faults.orElse(text);
        });
    }

    private static Outcome<boltlore.json.Json> parsed(String option, String said) {
        if (said.isBlank()) {
            return Outcome.faulty(Fault.of(option, "nothing", "a text", ""));
        }
        // As a JSON text each character is looked at, as those of files are.
        String json = JsonOut.text(said).written();
        Outcome<boltlore.json.Json> read = JsonFile.parse(option, json.getBytes(StandardCharsets.UTF_8));
        List<Fault> faults = read.faults().stream()
                .map(fault -> Fault.of(option, fault.found(), fault.expected(), fault.advice()))
                .toList();
        return faults.isEmpty() ? read : Outcome.faulty(faults);
    }
}
