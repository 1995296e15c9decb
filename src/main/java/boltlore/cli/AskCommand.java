package boltlore.cli;

import boltlore.choosing.ChoiceState;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import boltlore.order.Order;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
            "built, due, partner, discount, brackets, number, customer … say it now, as 'due 2027-03-12'",
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
                Bench.of(catalogue)
                        .then(bench -> asked.in(bench)
                                .then(order -> head.in(order, bench.catalogue()))
                                .then(order -> ask(screen, bench, order))));
    }

    private Outcome<Integer> ask(Screen screen, Bench bench, Order given) {
        SalesDesk desk = SalesDesk.of(bench, given, asked.newest(), time.deadline(FOOT), Deadline.NONE);
        return desk.chooser().standing(desk.choices()) instanceof ChoiceState.Sound sound
                ? talk(screen, bench, desk, sound)
                : Outcome.sound(new ChoiceAnswers(screen, desk, json(), false, false).look());
    }

    private Outcome<Integer> talk(Screen screen, Bench bench, SalesDesk desk, ChoiceState.Sound start) {
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        Dialogue dialogue = new Dialogue(screen, in);
        DraftFile draft = DraftFile.of(asked.file(), head.out(), desk.order());
        AskedOrder order = new AskedOrder(
                bench,
                other -> SalesDesk.of(bench, other, asked.newest(), time.deadline(FOOT), Deadline.NONE),
                desk,
                start,
                draft);
        Thread interrupted = new Thread(() -> broken(draft), "interrupted interview");
        Runtime.getRuntime().addShutdownHook(interrupted);
        try {
            Optional<Order> finished = new AskSession(dialogue, bench.catalogue(), order, notAsked(), draft).run();
            return finished.isPresent()
                    ? new OrderAsked(dialogue, bench, head.out(), draft).write(desk, finished.get())
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

    /** Of an order that was placed what it does not say was left out on purpose. */
    private Set<AskedHead> notAsked() {
        Path file = asked.file();
        return file == null || DraftFile.isDraft(file)
                ? Set.of()
                : Set.of(AskedHead.BUILT, AskedHead.DUE, AskedHead.PARTNER, AskedHead.DISCOUNT, AskedHead.BRACKETS);
    }
}
