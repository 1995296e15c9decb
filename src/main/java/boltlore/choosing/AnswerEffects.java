package boltlore.choosing;

import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.logic.Deadline;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What an answer changes before it is given: price, mass and lead time of the cheapest complete kit with it, against the
 * cheapest one without, and the values elsewhere that it rules out. All of it is exact.
 */
public final class AnswerEffects {

    private final Chooser chooser;
    private final BestKits best;
    private final Map<Choices, Optional<BestKit>> known;

    /** @param known the cheapest kits that were found already, to which those found now are added */
    public AnswerEffects(Chooser chooser, BestKits best, Map<Choices, Optional<BestKit>> known) {
        this.chooser = chooser;
        this.best = best;
        this.known = known;
    }

    /**
     * What one answer changes.
     *
     * @param before the cheapest kit without the answer; null where none is free of findings that stop it
     * @param after the cheapest kit with it, or null
     * @param closes values of other questions that it rules out, in the family's order
     */
    public record Effect(@Nullable BestKit before, @Nullable BestKit after, List<Choice> closes) {

        /** Empty where one of the kits has no price, or there is only one kit. */
        public Optional<BigDecimal> morePrice() {
            return before == null || after == null
                    ? Optional.empty()
                    : before.price().flatMap(was -> after.price().map(is -> is.subtract(was)));
        }
    }

    /**
     * The cheapest kit that keeps the choices.
     *
     * @throws Deadline.Passed where it takes longer than is given
     */
    public Optional<BestKit> cheapest(Choices choices) {
        Optional<BestKit> found = known.get(choices);
        if (found == null) {
            found = best.bestAlone(Aim.CHEAPEST, choices);
            known.put(choices, found);
        }
        return found;
    }

    /**
     * What the answer changes. Where the cheapest kit has that answer already, it is the cheapest with it too, and needs no
     * search: of equally cheap kits the preferred one stays so among fewer.
     *
     * @throws Deadline.Passed where it takes longer than is given
     */
    public Effect of(ChoiceState.Sound standing, Choice answer) {
        Choices before = standing.choices();
        Choices with = before.with(answer.option(), answer.value());
        Optional<BestKit> base = cheapest(before);
        boolean has = base.flatMap(kit -> kit.choices().value(answer.option()))
                .filter(answer.value()::equals)
                .isPresent();
        if (has && before.value(answer.option()).isEmpty()) {
            known.put(with, base);
        }
        return new Effect(base.orElse(null), cheapest(with).orElse(null), closes(standing, answer));
    }

    /** Values of other questions that the answer rules out, in the family's order; it needs no search for a kit. */
    public List<Choice> closes(ChoiceState.Sound before, Choice answer) {
        Choices with = before.choices().with(answer.option(), answer.value());
        if (!(chooser.standing(with) instanceof ChoiceState.Sound after)) {
            return List.of();
        }
        List<Choice> closed = new ArrayList<>();
        for (Option option : chooser.family().options()) {
            for (OptionValue value : option.values()) {
                Choice choice = new Choice(option.name(), value.value());
                boolean elsewhere = !option.name().equals(answer.option());
                if (elsewhere && before.isOpen(choice) && !after.isOpen(choice)) {
                    closed.add(choice);
                }
            }
        }
        return closed;
    }
}
