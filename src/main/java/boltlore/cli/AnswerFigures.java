package boltlore.cli;

import boltlore.asking.FigureWords;
import boltlore.asking.KitFigures;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choosing.AnswerEffects;
import boltlore.choosing.AnswerEffects.Effect;
import boltlore.choosing.BestKit;
import boltlore.choosing.ChoiceState;
import boltlore.choosing.ConflictWords;
import boltlore.logic.Deadline;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;

/** What each answer to a question changes, in words; what takes too long is left out. */
final class AnswerFigures {

    private static final int MOST_NAMED = 3;

    private final ChoosingSession choosing;
    private final AnswerEffects effects;
    private final ConflictWords words;
    private boolean late;

    AnswerFigures(ChoosingSession choosing) {
        this.choosing = choosing;
        this.effects = new AnswerEffects(choosing.chooser(), choosing.best(), new HashMap<>());
        this.words = new ConflictWords(choosing.choices().family());
    }

    /** 'From EUR 24,460.00 …' for all answers, and in the time given for each what it changes. */
    Optional<String> now(Choices choices) {
        try {
            return effects.cheapest(choices)
                    .map(kit -> "Cheapest complete kit now: " + KitFigures.say(kit.pricing()) + ".");
        } catch (Deadline.Passed tooLate) {
            late = true;
            return Optional.empty();
        }
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
        List<String> says = new ArrayList<>();
        Effect effect = effect(standing, answer);
        BestKit base = effect.before();
        BestKit kit = effect.after();
        if (kit != null) {
            says.add(base == null ? KitFigures.say(kit.pricing()) : difference(effect, base, kit));
        }
        ruledOut(effect.closes()).ifPresent(says::add);
        return says.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", says));
    }

    /** What it rules out is known without any search for a kit. */
    private Effect effect(ChoiceState.Sound standing, Choice answer) {
        try {
            return effects.of(standing, answer);
        } catch (Deadline.Passed tooLate) {
            late = true;
            return new Effect(null, null, effects.closes(standing, answer));
        }
    }

    /** 'EUR 635.00 more, 1.2 kg more, same lead time'. */
    private static String difference(Effect effect, BestKit base, BestKit kit) {
        String price = effect.morePrice()
                .map(more -> FigureWords.difference(kit, more))
                .orElse("no price");
        int days = kit.leadDays() - base.leadDays();
        BigDecimal kg = kit.massKg().subtract(base.massKg()).setScale(1, RoundingMode.HALF_UP);
        boolean same = price.equals("same price") && days == 0 && kg.signum() == 0;
        return same ? "no difference" : price + ", " + FigureWords.mass(kg) + ", " + FigureWords.days(days);
    }

    private Optional<String> ruledOut(List<Choice> closed) {
        if (closed.isEmpty()) {
            return Optional.empty();
        }
        int more = closed.size() - MOST_NAMED;
        List<String> named = closed.subList(0, Math.min(MOST_NAMED, closed.size())).stream()
                .map(words::says)
                .toList();
        return Optional.of("rules out " + String.join(", ", named) + (more > 0 ? " and " + more + " more" : ""));
    }
}
