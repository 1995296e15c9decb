package boltlore.cli;

import boltlore.choosing.Aim;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** One look at choices: what is settled, open and closed, and why. */
@Command(
        name = "choose",
        description =
                "Say what may still be chosen in a family, why not, what would have to change for it, and the price.")
final class ChooseCommand extends RoomCommand {

    /** For the price range, and again for the count. */
    private static final Duration FOOT = Duration.ofSeconds(5);

    @Mixin
    private AskedChoices asked = new AskedChoices();

    /** What to say instead of the whole card. */
    private static final class Wish {
        @Option(
                names = "--why",
                paramLabel = "OPTION=VALUE",
                description = "Say why a value is not available, or the only one left.")
        private @Nullable String why;

        @Option(
                names = "--to-have",
                paramLabel = "OPTION=VALUE",
                description = "Say what would have to change for a value that is not available.")
        private @Nullable String open;

        @Option(names = "--cheapest", description = "The cheapest complete kit that keeps the choices.")
        private boolean cheapest;

        @Option(names = "--lightest", description = "The lightest complete kit that keeps the choices.")
        private boolean lightest;

        @Option(names = "--soonest", description = "The complete kit that is ready soonest, the cheapest of those.")
        private boolean soonest;

        Optional<Aim> aim() {
            return cheapest
                    ? Optional.of(Aim.CHEAPEST)
                    : lightest ? Optional.of(Aim.LIGHTEST) : soonest ? Optional.of(Aim.SOONEST) : Optional.empty();
        }
    }

    @ArgGroup
    private Wish wish = new Wish();

    @Option(
            names = "--all",
            description = "Tell every value that is not available, every conflict and every way to change.")
    private boolean all;

    @Option(names = "--cost", description = "Tell costs too: not for a screen that a customer sees.")
    private boolean cost;

    @Mixin
    private TimeGiven time = new TimeGiven();

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Override
    int run(Screen screen) {
        HeadStart.forKits();
        return done(
                screen,
                CatalogueSession.of(catalogue)
                        .then(session -> asked.in(session)
                                .then(given -> inTime(
                                        screen,
                                        ChoosingSession.of(session, given, asked.newest(), deadline(), reasons())))));
    }

    /** A look at the card waits for its foot only as long as a customer would; what was asked for by name takes its time. */
    private Deadline deadline() {
        return isLook() ? time.deadline(FOOT) : time.deadline();
    }

    /** A card without what may still be chosen would be none. */
    private Deadline reasons() {
        return isLook() ? Deadline.NONE : time.deadline();
    }

    private boolean isLook() {
        return wish.why == null && wish.open == null && wish.aim().isEmpty();
    }

    private Outcome<Integer> inTime(Screen screen, ChoosingSession choosing) {
        try {
            return answer(screen, choosing);
        } catch (Deadline.Passed tooLate) {
            screen.flush();
            return Outcome.sound(refused(TimeGiven.tooLate(tooLate), Exit.UNDECIDED));
        }
    }

    private Outcome<Integer> answer(Screen screen, ChoosingSession choosing) {
        ChoiceAnswers answers = new ChoiceAnswers(screen, choosing, json(), all, cost);
        if (wish.why != null) {
            return WrittenChoices.one(choosing.choices().family(), wish.why)
                    .then(choice -> Outcome.sound(answers.why(choice)));
        }
        if (wish.open != null) {
            return WrittenChoices.one(choosing.choices().family(), wish.open)
                    .then(choice -> Outcome.sound(answers.opening(choice)));
        }
        return Outcome.sound(wish.aim().map(answers::best).orElseGet(answers::look));
    }
}
