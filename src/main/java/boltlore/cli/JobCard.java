package boltlore.cli;

import boltlore.asking.FigureWords;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choosing.Aim;
import boltlore.choosing.BestKit;
import boltlore.choosing.ChoiceState;
import boltlore.choosing.ConflictWords;
import boltlore.logic.Deadline;
import boltlore.order.Order;
import boltlore.trades.costing.quote.OrderPricing;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Where choices stand, as on a job card: settled answers as sentences, then what is open, then what is closed and why, and
 * the money in one line at the foot.
 */
final class JobCard {

    /** So many values of one question are read; more are scrolled past. */
    private static final int MOST_VALUES = 60;

    private static final String STOPPED = "No kit with these choices is free of findings that stop it";

    private final Screen screen;
    private final ChoosingSession choosing;
    private final Family family;
    private final ConflictWords words;

    JobCard(Screen screen, ChoosingSession choosing) {
        this.screen = screen;
        this.choosing = choosing;
        this.family = choosing.choices().family();
        this.words = new ConflictWords(family);
    }

    /** @param all whether closed values of settled questions are told too */
    void print(ChoiceState.Sound standing, boolean all) {
        List<Option> questions = standing.questions();
        screen.heading(heading(questions.size()));
        decided(standing);
        if (!questions.isEmpty()) {
            screen.heading("Still to decide");
            questions.forEach(question -> open(standing, question, all));
        }
        closed(standing, all ? family.options() : questions, all);
        screen.heading(foot(standing.choices()));
    }

    private String heading(int open) {
        int options = family.options().size();
        return family.says().english() + " (" + family.name() + "): " + (options - open) + " of " + options
                + " questions decided";
    }

    /** What is decided, each answer a sentence. */
    void decided(ChoiceState.Sound standing) {
        Choices choices = standing.choices();
        for (Option option : family.options()) {
            choices.value(option.name())
                    .map(value -> words.says(new Choice(option.name(), value)) + ".")
                    .or(() -> forced(standing, option))
                    .ifPresent(sentence -> screen.wrapped(2, sentence));
        }
    }

    private Optional<String> forced(ChoiceState.Sound standing, Option option) {
        return standing.forced(option)
                .map(value -> new Choice(option.name(), value.value()))
                .map(left -> whyForced(standing, left));
    }

    String whyForced(ChoiceState.Sound standing, Choice left) {
        return words.forced(left, choosing.chooser().whyForced(standing.choices(), left, choosing.importance()));
    }

    private void open(ChoiceState.Sound standing, Option option, boolean all) {
        screen.line("  " + option.asks());
        List<OptionValue> every = standing.open(option);
        List<OptionValue> values = all ? every : every.subList(0, Math.min(MOST_VALUES, every.size()));
        int longest =
                values.stream().mapToInt(value -> value.value().length()).max().orElse(0);
        for (OptionValue value : values) {
            String gap = " ".repeat(longest - value.value().length() + 2);
            screen.wrapped(4, option.name() + "=" + value.value() + gap + says(option, value));
        }
        further(4, every.size() - values.size(), "--all tells them");
    }

    /** One question with all its values under their numbers: what each changes, or why it is not available. */
    void question(ChoiceState.Sound standing, Option option, AnswerFigures figures) {
        screen.heading(option.asks());
        figures.begin();
        figures.now(standing.choices()).ifPresent(now -> screen.wrapped(2, now));
        List<OptionValue> values = option.values();
        for (int i = 0; i < Math.min(MOST_VALUES, values.size()); i++) {
            OptionValue value = values.get(i);
            Choice choice = new Choice(option.name(), value.value());
            if (standing.isOpen(choice)) {
                screen.wrapped(2, String.format(Locale.ROOT, "%2d  %s: %s", i + 1, value.value(), says(option, value)));
                figures.of(standing, choice).ifPresent(changes -> screen.wrapped(6, changes + "."));
            } else {
                screen.wrapped(2, String.format(Locale.ROOT, "%2d  %s", i + 1, why(standing, choice)));
            }
        }
        further(2, values.size() - MOST_VALUES, "answer with the name of one");
        if (figures.late()) {
            screen.wrapped(2, "Not every difference is worked out yet (allow more with --within).");
        }
    }

    private void further(int indent, int more, String how) {
        if (more > 0) {
            screen.wrapped(indent, more + " further values; " + how + ".");
        }
    }

    private static String says(Option option, OptionValue value) {
        return value.says().english() + (value.value().equals(option.usual()) ? " (default)" : "");
    }

    private void closed(ChoiceState.Sound standing, List<Option> options, boolean all) {
        List<Option> some = options.stream()
                .filter(option -> !standing.closed(option).isEmpty())
                .toList();
        if (!some.isEmpty()) {
            screen.heading("Not available");
        }
        some.forEach(option -> closed(standing, option, all ? Integer.MAX_VALUE : MOST_VALUES));
    }

    private void closed(ChoiceState.Sound standing, Option option, int most) {
        List<OptionValue> values = standing.closed(option);
        for (OptionValue value : values.subList(0, Math.min(most, values.size()))) {
            screen.wrapped(2, why(standing, new Choice(option.name(), value.value())));
        }
        further(2, values.size() - most, "--all tells why");
    }

    /** Why a value is not available, or that it is. */
    String why(ChoiceState.Sound standing, Choice choice) {
        Option option = family.option(choice.option()).orElseThrow();
        if (!standing.isOpen(choice)) {
            return words.closed(
                    choice, choosing.chooser().whyClosed(standing.choices(), choice, choosing.importance()));
        }
        if (standing.forced(option).isPresent()) {
            return whyForced(standing, choice);
        }
        boolean chosen = standing.choices().value(option.name()).isPresent();
        return words.says(choice) + (chosen ? " is chosen." : " is available.");
    }

    /** What the choices come to, from the cheapest kit to the dearest, and how many valid orders remain. */
    String foot(Choices choices) {
        Optional<Choices> only = only(choices);
        return only.isPresent()
                ? choosing.best().pricing(only.get()).map(JobCard::says).orElse(STOPPED) + "; 1 valid order remains."
                : inTime("Price range not worked out yet (allow more with --within)", () -> price(choices)) + "; "
                        + inTime("remaining orders not counted yet", () -> count(choices)) + ".";
    }

    /** The order that is left, where it is only one: its price needs no search. */
    private Optional<Choices> only(Choices choices) {
        return choosing.chooser().standing(choices) instanceof ChoiceState.Sound sound
                        && sound.withForced().unsettled().isEmpty()
                ? Optional.of(sound.withForced())
                : Optional.empty();
    }

    private static String says(OrderPricing pricing) {
        return FigureWords.range(pricing, pricing);
    }

    /** That the due date is too soon for all kits that keep the choices. */
    Optional<String> tooSoon(Order order, Choices choices) {
        LocalDate due = order.due();
        if (due == null) {
            return Optional.empty();
        }
        choosing.time().begin();
        try {
            Optional<Choices> only = only(choices);
            Optional<OrderPricing> soonest = only.isPresent()
                    ? choosing.best().pricing(only.get())
                    : choosing.best().bestAlone(Aim.SOONEST, choices).map(BestKit::pricing);
            return soonest.flatMap(pricing -> late(pricing.leadDays(), due));
        } catch (Deadline.Passed tooLate) {
            return Optional.of("Whether a kit is ready by " + due + " is not worked out yet.");
        }
    }

    private Optional<String> late(int days, LocalDate due) {
        LocalDate ready = choosing.best().asked().on().plusDays(days);
        return ready.isAfter(due)
                ? Optional.of("Check: the due date " + due + " is too soon. The lead time is " + days + " days, until "
                        + ready + ".")
                : Optional.empty();
    }

    private String inTime(String tooLate, Supplier<String> figure) {
        choosing.time().begin();
        try {
            return figure.get();
        } catch (Deadline.Passed e) {
            return tooLate;
        }
    }

    private String price(Choices choices) {
        Optional<BestKit> cheapest = choosing.best().bestAlone(Aim.CHEAPEST, choices);
        Optional<BestKit> dearest = cheapest.flatMap(same -> choosing.best().bestAlone(Aim.DEAREST, choices));
        return cheapest.isPresent() && dearest.isPresent()
                ? FigureWords.range(cheapest.get().pricing(), dearest.get().pricing())
                : STOPPED;
    }

    private String count(Choices choices) {
        return FigureWords.orders(choosing.questions().count(choices), "remain", "remains");
    }
}
