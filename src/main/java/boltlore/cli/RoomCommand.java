package boltlore.cli;

import boltlore.exports.Exports;
import boltlore.exports.SheetSet;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.report.SheetFile;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentSkipListSet;
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

    private final Set<String> kept = new ConcurrentSkipListSet<>();

    abstract int run(Screen screen);

    boolean json() {
        return json;
    }

    @Override
    public final Integer call() {
        Screen screen = new Screen(spec.commandLine().getOut(), json);
        int exit = run(screen);
        screen.flush();
        Screen errors = new Screen(aside());
        kept.forEach(sentence -> errors.wrapped(0, sentence));
        errors.flush();
        return exit;
    }

    /** Writes the command's sheets into a folder. */
    Outcome<List<Path>> write(Path folder, List<SheetFile> files) {
        return writeSets(folder, List.of(new SheetSet(spec.name(), files, true)));
    }

    /** Writes sheets of several kinds; what stays because somebody has changed it is told when the command ends. */
    Outcome<List<Path>> writeSets(Path folder, List<SheetSet> sets) {
        return Exports.write(folder, sets).then(written -> {
            kept.addAll(written.kept());
            return Outcome.sound(written.files());
        });
    }

    /** Prints progress or a warning where it does not mix with the answer. */
    /** Where a long run says how far it has come: a terminal, where a later line is written over the earlier; else nowhere. */
    PrintWriter progress() {
        return OnTerminal.asideIsOne() ? aside() : new PrintWriter(Writer.nullWriter());
    }

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
