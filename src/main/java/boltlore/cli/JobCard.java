package boltlore.cli;

import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choosing.Aim;
import boltlore.choosing.BestKit;
import boltlore.choosing.ConflictWords;
import boltlore.choosing.Standing;
import boltlore.logic.Deadline;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Where choices stand, as on a job card: settled answers as sentences, then what is open, then what is closed and why, and
 * the money in one line at the foot.
 */
final class JobCard {

    private final Screen screen;
    private final SalesDesk desk;
    private final Family family;
    private final ConflictWords words;

    JobCard(Screen screen, SalesDesk desk) {
        this.screen = screen;
        this.desk = desk;
        this.family = desk.choices().family();
        this.words = new ConflictWords(family);
    }

    /** @param all whether closed values of settled questions are told too */
    void print(Standing.Sound standing, boolean all) {
        List<Option> questions = standing.questions();
        screen.heading(heading(questions.size()));
        settled(standing);
        if (!questions.isEmpty()) {
            screen.heading("Open");
            questions.forEach(question -> open(standing, question));
        }
        closed(standing, all ? family.options() : questions);
        screen.heading(foot(standing.choices()));
    }

    private String heading(int open) {
        int options = family.options().size();
        return family.says().english() + " (" + family.name() + "): " + (options - open) + " of " + options
                + " questions settled";
    }

    /** Settled answers, each a sentence. */
    void settled(Standing.Sound standing) {
        Choices choices = standing.choices();
        for (Option option : family.options()) {
            choices.value(option.name())
                    .map(value -> words.says(new Choice(option.name(), value)) + ".")
                    .or(() -> forced(standing, option))
                    .ifPresent(sentence -> screen.wrapped(2, sentence));
        }
    }

    private Optional<String> forced(Standing.Sound standing, Option option) {
        return standing.forced(option)
                .map(value -> new Choice(option.name(), value.value()))
                .map(left -> words.forced(left, desk.chooser().whyForced(standing.choices(), left, desk.importance())));
    }

    void open(Standing.Sound standing, Option option) {
        screen.line("  " + option.asks());
        List<OptionValue> values = standing.open(option);
        int longest =
                values.stream().mapToInt(value -> value.value().length()).max().orElse(0);
        for (OptionValue value : values) {
            String gap = " ".repeat(longest - value.value().length() + 2);
            screen.wrapped(4, option.name() + "=" + value.value() + gap + says(option, value));
        }
    }

    /** One question with its open values, each under its number in the family's order. */
    void question(Standing.Sound standing, Option option) {
        screen.heading(option.asks());
        List<String> names = option.valueNames();
        for (OptionValue value : standing.open(option)) {
            int number = names.indexOf(value.value()) + 1;
            screen.wrapped(2, "%2d  %s: %s".formatted(number, value.value(), says(option, value)));
        }
        int closed = standing.closed(option).size();
        if (closed > 0) {
            screen.wrapped(2, closed == 1 ? "1 value is closed." : closed + " values are closed.");
        }
    }

    private static String says(Option option, OptionValue value) {
        return value.says().english() + (value.value().equals(option.usual()) ? " (usual)" : "");
    }

    private void closed(Standing.Sound standing, List<Option> options) {
        boolean headed = false;
        for (Option option : options) {
            for (OptionValue value : standing.closed(option)) {
                if (!headed) {
                    screen.heading("Closed");
                    headed = true;
                }
                screen.wrapped(2, why(standing.choices(), new Choice(option.name(), value.value())));
            }
        }
    }

    String why(Choices choices, Choice closed) {
        return words.closed(closed, desk.chooser().whyClosed(choices, closed, desk.importance()));
    }

    /** What the choices come to, from the cheapest kit to the dearest, and how many orders keep them. */
    String foot(Choices choices) {
        return inTime("The kit price was not found in the time given (--within)", () -> price(choices)) + "; "
                + inTime("how many orders keep this was not counted in that time", () -> count(choices)) + ".";
    }

    private String inTime(String tooLate, Supplier<String> figure) {
        desk.time().begin();
        try {
            return figure.get();
        } catch (Deadline.Passed e) {
            return tooLate;
        }
    }

    private String price(Choices choices) {
        Optional<BestKit> cheapest = desk.best().best(Aim.CHEAPEST, choices);
        Optional<BestKit> dearest = cheapest.flatMap(same -> desk.best().best(Aim.DEAREST, choices));
        return cheapest.isPresent() && dearest.isPresent()
                ? "Kit price " + Figures.range(cheapest.get(), dearest.get())
                : "No kit with these choices is free of findings that stop it";
    }

    private String count(Choices choices) {
        return Figures.orders(desk.questions().count(choices), "keep this", "keeps this");
    }
}
