package boltlore.cli;

import boltlore.asking.AskedHead;
import boltlore.choosing.ChoiceState;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import boltlore.order.Order;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Asks for an order in the terminal, one question at a time, and writes it as a file that 'kit' takes. */
@Command(
        name = "ask",
        description = "Ask for an order's choices one question at a time, and write an order file for 'kit'.")
final class AskCommand extends RoomCommand {

    static final String SHORT_HELP =
            "Answer with a number or a value; '?' lists what else can be said. Every answer is kept in a draft.";
    static final List<String> HELP = List.of(
            "a number or a value      answer the question; OPTION=VALUE answers any question",
            "default                  take the default answer",
            "later                    put the question off",
            "back                     go back to the question before",
            "undo                     take the last change back, as often as you like",
            "list                     what is decided, still to decide and not available",
            "why VALUE                why a value is not available, or the only one left",
            "open VALUE               what would have to change for it; then 'take 1' changes it so",
            "built, due, partner, discount, brackets, number, customer, placed, language … say it now, as 'due 2027-03-12'",
            "write                    when all is decided: write the order",
            "save                     keep the draft and go on",
            "quit                     keep the draft and end; Ctrl-C does the same");

    /** For the price range after each answer, and again for the count. */
    private static final Duration FOOT = Duration.ofSeconds(4);

    @Mixin
    private AskedChoices asked = new AskedChoices();

    @Mixin
    private OrderHead head = new OrderHead();

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
                                .then(order -> head.in(order, usualDay(), session.catalogue()))
                                .then(order -> ask(screen, session, order))));
    }

    /** An order that is being placed is so today; what an order file leaves out it leaves out on purpose. */
    private @Nullable LocalDate usualDay() {
        return isNew() ? LocalDate.now(ZoneId.systemDefault()) : null;
    }

    private boolean isNew() {
        Path file = asked.file();
        return file == null || DraftFile.isDraft(file);
    }

    private Outcome<Integer> ask(Screen screen, CatalogueSession session, Order given) {
        ChoosingSession choosing =
                ChoosingSession.of(session, given, asked.newest(), time.deadline(FOOT), Deadline.NONE);
        return choosing.chooser().standing(choosing.choices()) instanceof ChoiceState.Sound sound
                ? talk(screen, session, choosing, sound)
                : Outcome.sound(new ChoiceAnswers(screen, choosing, json(), false, false).look());
    }

    private Outcome<Integer> talk(
            Screen screen, CatalogueSession session, ChoosingSession choosing, ChoiceState.Sound start) {
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        Dialogue dialogue = new Dialogue(screen, in);
        DraftFile draft = DraftFile.of(asked.file(), head.out(), schemas());
        AskedOrder order = new AskedOrder(
                session,
                other -> ChoosingSession.of(session, other, asked.newest(), time.deadline(FOOT), Deadline.NONE),
                choosing,
                start,
                draft);
        Thread interrupted = new Thread(() -> broken(draft), "interrupted interview");
        Runtime.getRuntime().addShutdownHook(interrupted);
        try {
            Optional<Order> finished = new AskSession(dialogue, session.catalogue(), order, notAsked(), draft).run();
            return finished.isPresent()
                    ? new OrderAsked(dialogue, session, head.out(), draft, schemas())
                            .write(order.choosing(), finished.get())
                    : quit(screen, draft);
        } finally {
            Interruptible.forget(interrupted);
        }
    }

    private static Outcome<Integer> quit(Screen screen, DraftFile draft) {
        screen.wrapped(0, draft.says());
        return Outcome.sound(Exit.STOPPED);
    }

    /** The interrupt key: every answer is in the draft already. */
    private void broken(DraftFile draft) {
        aside().println();
        aside().println(draft.says());
        aside().flush();
    }

    private Path schemas() {
        return catalogue.folder().resolve("schema");
    }

    /** Of an order that was placed what it does not say was left out on purpose. */
    private Set<AskedHead> notAsked() {
        return isNew()
                ? Set.of()
                : Set.of(AskedHead.BUILT, AskedHead.DUE, AskedHead.PARTNER, AskedHead.DISCOUNT, AskedHead.BRACKETS);
    }
}
