package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import boltlore.measure.PartNumber;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Questions on all valid orders of a family that keep some choices. */
@Command(
        name = "orders",
        description =
                "Count a family's valid orders; say which contain a part, which parts occur together, what all of them contain.")
final class OrdersCommand extends RoomCommand {

    @Mixin
    private AskedChoices asked = new AskedChoices();

    /** What is asked of the orders. */
    private static final class About {
        @Option(
                names = "--with",
                paramLabel = "PART",
                description = "Say which orders contain this part, and what share of all that is.")
        private List<String> with = new ArrayList<>();

        @Option(
                names = "--together",
                arity = "2..*",
                paramLabel = "PART",
                description = "Say whether these parts ever ship together, with an example order or the reason.")
        private List<String> together = new ArrayList<>();

        @Option(
                names = "--certain",
                description = "List the parts that every order contains, with their least quantity.")
        private boolean sure;
    }

    @ArgGroup
    private About about = new About();

    @Mixin
    private TimeGiven time = new TimeGiven();

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Override
    int run(Screen screen) {
        return done(
                screen,
                CatalogueSession.of(catalogue)
                        .then(session -> asked.in(session)
                                .then(given -> parts(session.catalogue())
                                        .then(parts -> Outcome.sound(answer(
                                                new OrderAnswers(
                                                        screen,
                                                        session,
                                                        ChoosingSession.of(
                                                                session,
                                                                given,
                                                                asked.newest(),
                                                                time.deadline(),
                                                                time.deadline()),
                                                        json()),
                                                parts))))));
    }

    private int answer(OrderAnswers answers, List<PartNumber> parts) {
        try {
            return inTime(answers, parts);
        } catch (Deadline.Passed tooLate) {
            return refused(TimeGiven.tooLate(tooLate), Exit.UNDECIDED);
        }
    }

    private int inTime(OrderAnswers answers, List<PartNumber> parts) {
        if (about.sure) {
            return answers.sure();
        }
        if (parts.isEmpty()) {
            return answers.count();
        }
        return about.with.isEmpty() ? answers.together(parts) : answers.with(parts);
    }

    private Outcome<List<PartNumber>> parts(Catalogue known) {
        List<String> names =
                known.parts().keySet().stream().map(PartNumber::text).toList();
        List<String> written = about.with.isEmpty() ? about.together : about.with;
        List<Fault> unknown = written.stream()
                .filter(number -> !names.contains(number))
                .map(number -> unknown(number, names))
                .toList();
        return unknown.isEmpty()
                ? Outcome.sound(written.stream().map(PartNumber::new).toList())
                : Outcome.faulty(unknown);
    }

    private static Fault unknown(String number, List<String> names) {
        String advice = Nearest.advice(number, names, "'boltlore parts' lists them");
        return Fault.of("", "part number '" + number + "'", "a part of the catalogue", advice);
    }
}
