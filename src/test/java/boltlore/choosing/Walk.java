package boltlore.choosing;

import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choices;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * A person who goes through whole interviews, one after the other: each time at a desk that knows nothing yet, choosing
 * any open value of any open question until all are settled. The same seed makes the same choices.
 */
public final class Walk {

    private final Family family;
    private final Random random;
    private Chooser chooser;
    private Choices next;

    public Walk(Family family, long seed) {
        this.family = family;
        this.random = new Random(seed);
        this.chooser = new Chooser(family);
        this.next = Choices.of(family, Map.of());
    }

    /** All values of every option for the choices that were made last. */
    public ChoiceState.Sound look() {
        return (ChoiceState.Sound) chooser.standing(next);
    }

    /** Makes the next choice, or begins anew where none is left. */
    public void choose(ChoiceState.Sound seen) {
        List<Option> questions = seen.questions();
        if (questions.isEmpty()) {
            chooser = new Chooser(family);
            next = Choices.of(family, Map.of());
        } else {
            Option question = questions.get(random.nextInt(questions.size()));
            List<OptionValue> open = seen.open(question);
            next = seen.choices()
                    .with(question.name(), open.get(random.nextInt(open.size())).value());
        }
    }
}
