package boltlore.cli;

import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choosing.Aim;
import boltlore.choosing.BestKit;
import boltlore.choosing.ChoiceState;
import boltlore.choosing.ConflictWords;
import boltlore.logic.Deadline;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What each answer to a question changes: price, mass and lead time of the cheapest complete kit with it, against the
 * cheapest one without, and the values elsewhere that it rules out. All of it is exact; what takes too long is left out.
 */
final class AnswerFigures {

    private static final int MOST_NAMED = 3;

    private final ChoosingSession choosing;
    private final ConflictWords words;
    private final Map<Choices, Optional<BestKit>> cheapest = new HashMap<>();
    private boolean late;

    AnswerFigures(ChoosingSession choosing) {
        this.choosing = choosing;
        this.words = new ConflictWords(choosing.choices().family());
    }

    /** 'From EUR 24,460.00 …' for all answers, and in the time given for each what it changes. */
    Optional<String> now(Choices choices) {
        return best(choices).map(kit -> "Cheapest complete kit now: " + KitFigures.say(kit.pricing()) + ".");
    }

    /** Begins a question: the time given holds for all its answers together. */
    void begin() {
        late = false;
        choosing.time().begin();
    }

    /** Whether the time was up before all was worked out. */
    boolean late() {
        return late;
    }

    Optional<String> of(ChoiceState.Sound standing, Choice answer) {
        Choices before = standing.choices();
        Choices after = before.with(answer.option(), answer.value());
        List<String> says = new ArrayList<>();
        Optional<BestKit> now = best(before);
        best(after)
                .ifPresent(kit -> says.add(
                        now.map(base -> difference(base, kit)).orElseGet(() -> KitFigures.say(kit.pricing()))));
        if (choosing.chooser().standing(after) instanceof ChoiceState.Sound sound) {
            ruledOut(standing, sound, answer).ifPresent(says::add);
        }
        return says.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", says));
    }

    private Optional<BestKit> best(Choices choices) {
        Optional<BestKit> known = cheapest.get(choices);
        if (known == null) {
            known = inTime(choices);
        }
        return known;
    }

    private Optional<BestKit> inTime(Choices choices) {
        try {
            Optional<BestKit> found = choosing.best().bestAlone(Aim.CHEAPEST, choices);
            cheapest.put(choices, found);
            return found;
        } catch (Deadline.Passed tooLate) {
            late = true;
            return Optional.empty();
        }
    }

    /** 'EUR 635.00 more, 1.2 kg more, same lead time'. */
    private static String difference(BestKit base, BestKit kit) {
        String price = base.price()
                .flatMap(was -> kit.price().map(is -> FigureWords.difference(kit, is.subtract(was))))
                .orElse("no price");
        int days = kit.leadDays() - base.leadDays();
        BigDecimal kg = kit.massKg().subtract(base.massKg()).setScale(1, RoundingMode.HALF_UP);
        boolean same = price.equals("same price") && days == 0 && kg.signum() == 0;
        return same ? "no difference" : price + ", " + FigureWords.mass(kg) + ", " + FigureWords.days(days);
    }

    private Optional<String> ruledOut(ChoiceState.Sound before, ChoiceState.Sound after, Choice answer) {
        List<String> closed = new ArrayList<>();
        for (Option option : choosing.choices().family().options()) {
            for (OptionValue value : option.values()) {
                Choice choice = new Choice(option.name(), value.value());
                boolean elsewhere = !option.name().equals(answer.option());
                if (elsewhere && before.isOpen(choice) && !after.isOpen(choice)) {
                    closed.add(words.says(choice));
                }
            }
        }
        if (closed.isEmpty()) {
            return Optional.empty();
        }
        int more = closed.size() - MOST_NAMED;
        String named = String.join(", ", closed.subList(0, Math.min(MOST_NAMED, closed.size())));
        return Optional.of("rules out " + named + (more > 0 ? " and " + more + " more" : ""));
    }
}
