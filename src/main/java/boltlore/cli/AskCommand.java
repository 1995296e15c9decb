package boltlore.cli;

import boltlore.catalogue.BuildDates;
import boltlore.catalogue.Option;
import boltlore.choices.Choices;
import boltlore.order.Order;
import boltlore.choosing.Interview;
import boltlore.choosing.Standing;
import boltlore.faults.Outcome;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Asks for an order in the terminal, one question at a time, and writes it as a file that 'kit' takes. */
@Command(
        name = "ask",
        description = "Ask for an order's choices one question at a time, and write an order file for 'kit'.")
final class AskCommand extends RoomCommand {

    /** For the price range after each answer, and again for the count. */
    private static final Duration FOOT = Duration.ofSeconds(2);

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
        return done(
                screen, Bench.of(catalogue).then(bench -> asked.in(bench).then(given -> ask(screen, bench, given))));
    }

    private Outcome<Integer> ask(Screen screen, Bench bench, Order given) {
        SalesDesk desk = SalesDesk.of(bench, byDate(given), time.deadline(FOOT));
        return desk.chooser().standing(desk.choices()) instanceof Standing.Sound sound
                ? talk(screen, bench, desk, new Interview(desk.chooser(), sound))
                : Outcome.sound(new ChoiceAnswers(screen, desk, json(), false).look());
    }

    private Outcome<Integer> talk(Screen screen, Bench bench, SalesDesk desk, Interview interview) {
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        Dialogue dialogue = new Dialogue(screen, in);
        if (!new AskSession(dialogue, desk, interview).run()) {
            screen.wrapped(0, "Nothing was written.");
            return Outcome.sound(Exit.STOPPED);
        }
        return new OrderAsked(dialogue, bench, head).write(interview.standing().withForced(), desk.importance());
    }

    /** What the donor's build date settles is not asked. */
    private Order byDate(Order given) {
        LocalDate built = head.built();
        Choices choices = given.choices();
        for (Option option : choices.family().options()) {
            Optional<String> settled = settled(option, built);
            if (settled.isPresent() && choices.value(option.name()).isEmpty()) {
                choices = choices.with(option.name(), settled.get());
            }
        }
        return given.withChoices(choices);
    }

    private static Optional<String> settled(Option option, @Nullable LocalDate built) {
        return option.builtFrom().stream()
                .filter(dates -> built != null && dates.holds(built))
                .map(BuildDates::value)
                .findFirst();
    }
}
