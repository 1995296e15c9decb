package boltlore.cli;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Asks a person before what cannot be undone; a script, which nobody watches, is taken by its word. */
final class Sure {

    /** Where Linux says what this process reads from. */
    static final Path INPUT = Path.of("/proc/self/fd/0");

    @Option(names = "--yes", description = "Do not ask first whether you are sure.")
    private boolean yes;

    /** @param what that cannot be undone, as 'BL-1001 is frozen as it was quoted' */
    Outcome<Boolean> of(Screen screen, String what) {
        return of(screen, yes, what);
    }

    static Outcome<Boolean> of(Screen screen, boolean said, String what) {
        return said || !OnTerminal.isTerminal(INPUT)
                ? Outcome.sound(true)
                : asked(
                        new Dialogue(
                                screen, new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))),
                        what);
    }

    /** Nothing but 'yes' is a yes. */
    static Outcome<Boolean> asked(Dialogue dialogue, String what) {
        String answer = dialogue.ask(what + ", and that cannot be undone. Go on? Type yes:")
                .orElse("");
        return answer.equalsIgnoreCase("yes")
                ? Outcome.sound(true)
                : Outcome.faulty(Fault.of("", "'" + answer + "'", "yes", "Nothing was done."));
    }
}
