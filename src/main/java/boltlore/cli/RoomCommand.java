package boltlore.cli;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What all commands share: --help, --json, where they print, how faults become words and an exit code. */
abstract class RoomCommand implements Callable<Integer> {

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help and end.")
    @SuppressWarnings("UnusedVariable") // read by the parser itself
    private boolean help;

    @Option(names = "--json", description = "Print the answer as JSON, for programs.")
    private boolean json;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    abstract int run(Screen screen);

    boolean json() {
        return json;
    }

    @Override
    public final Integer call() {
        Screen screen = new Screen(spec.commandLine().getOut(), json);
        int exit = run(screen);
        screen.flush();
        return exit;
    }

    /** Prints progress or a warning where it does not mix with the answer. */
    PrintWriter aside() {
        return spec.commandLine().getErr();
    }

    /** The exit code of a sound outcome, or its faults in words on the error stream. */
    int done(Screen screen, Outcome<Integer> outcome) {
        if (outcome instanceof Outcome.Sound<Integer> sound) {
            return sound.value();
        }
        screen.flush();
        return refused(outcome.faults(), Exit.FAULTS);
    }

    int refused(List<Fault> faults, int exit) {
        Screen errors = new Screen(aside());
        errors.faults(faults);
        errors.flush();
        return exit;
    }
}
