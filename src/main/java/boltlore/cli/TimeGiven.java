package boltlore.cli;

import boltlore.faults.Fault;
import boltlore.logic.Deadline;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How long a command may look for an answer. */
final class TimeGiven {

    @Option(
            names = "--within",
            paramLabel = "TIME",
            converter = Within.class,
            description = "Give up what takes longer than this time (500ms, 30s, 5m), and say so.")
    private @Nullable Duration within;

    /** The time given; without any there is no end. */
    Deadline deadline() {
        return within == null ? Deadline.NONE : ending(within);
    }

    /** The time given; without any the usual one. */
    Deadline deadline(Duration usual) {
        return ending(within == null ? usual : within);
    }

    private static Deadline ending(Duration time) {
        return Deadline.in(time.toNanos(), System::nanoTime);
    }

    static List<Fault> tooLate(Deadline.Passed why) {
        return List.of(Fault.of(
                "",
                "no answer, because " + why.why(),
                "an answer",
                "Allow more with --within TIME, or choose more first."));
    }
}
