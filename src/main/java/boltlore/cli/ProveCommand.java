package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Proves a catalogue before a customer finds the hole in it. */
@Command(
        name = "prove",
        description = "Prove what must hold of every valid order of a family, or show an order that refutes it.")
final class ProveCommand extends RoomCommand {

    /** Asked instead of the proofs: one of them at most. */
    static final class Instead {

        @Option(
                names = "--trial-builds",
                paramLabel = "pairs|threes",
                description = "Name few trial builds that together have every pair (or three, up to 20 options) of"
                        + " values which any valid order has, with their cost.")
        private Sampling.@Nullable Ways trialBuilds;

        @Option(
                names = "--against",
                paramLabel = "CATALOGUE",
                description = "Say which kits change from that catalogue, the earlier revision, to this one.")
        private @Nullable Path against;
    }

    @Parameters(arity = "0..*", paramLabel = "FAMILY", description = "Families; without one all are proved.")
    private List<String> families = new ArrayList<>();

    @Option(
            names = "--within",
            paramLabel = "TIME",
            converter = Within.class,
            description = "Stop after this time (500ms, 30s, 5m) and name what is left unproved.")
    private @Nullable Duration within;

    @ArgGroup(exclusive = true, multiplicity = "0..1")
    private Instead instead = new Instead();

    @Mixin
    private ProofFiles files = new ProofFiles();

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Override
    int run(Screen screen) {
        return done(
                screen,
                catalogue
                        .read()
                        .then(known -> FamiliesAsked.find(families, known)
                                .then(asked -> task(known, asked)
                                        .then(task -> Outcome.sound(
                                                Interruptible.run(deadline(), until -> run(screen, task, until)))))));
    }

    private Outcome<ProofTask> task(Catalogue known, List<Family> asked) {
        if (instead.trialBuilds != null) {
            return Outcome.sound(new SamplingTask(known, asked, instead.trialBuilds, files, this::writeSets));
        }
        return instead.against == null
                ? AcceptedKinds.known(asked, catalogue.folder())
                        .then(sound -> Outcome.sound(new ProvingTask(known, sound, files, this::writeSets)))
                : CatalogueReader.readTogether(instead.against, catalogue.folder())
                        .then(both -> Outcome.sound(new RevisionTask(both.before(), both.after(), asked)));
    }

    private Deadline deadline() {
        long nanos = within == null ? Long.MAX_VALUE / 4 : within.toNanos();
        return Deadline.in(nanos, System::nanoTime);
    }

    private int run(Screen screen, ProofTask task, Deadline until) {
        ProofProgress progress = new ProofProgress(progress());
        ProofTask.Done done = task.done(until, progress);
        progress.end();
        if (json()) {
            screen.line(done.json().written().stripTrailing());
        } else {
            done.print(screen);
        }
        screen.flush();
        return done.faults().isEmpty() ? done.exit() : refused(done.faults(), Exit.NOT_WRITTEN);
    }
}
