package boltlore.oracle;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Expectation;
import boltlore.catalogue.Need;
import boltlore.catalogue.Option;
import boltlore.trial.Say;
import java.util.ArrayList;
import java.util.List;

/** Conditions, needs and expectations by chance, over these options and these positions. */
final class RandomConditions {

    private final Dice dice;
    private final List<Option> options;
    private final int positions;

    RandomConditions(Dice dice, List<Option> options, int positions) {
        this.dice = dice;
        this.options = options;
        this.positions = positions;
    }

    Condition overOptions() {
        return condition(2, 0);
    }

    /** May ask whether positions before that one are filled. */
    Condition before(int position) {
        return dice.once(4) ? Condition.ALWAYS : condition(2, position);
    }

    Condition anywhere() {
        return before(positions);
    }

    private Condition condition(int depth, int positionsBelow) {
        int kind = dice.below(depth > 0 ? 7 : 3);
        if (kind == 2 && positionsBelow > 0) {
            return Say.filled("position-" + dice.below(positionsBelow));
        }
        if (kind < 3) {
            return is();
        }
        if (kind == 3) {
            return Say.not(condition(depth - 1, positionsBelow));
        }
        List<Condition> parts = new ArrayList<>();
        for (int at = dice.between(1, 3); at > 0; at--) {
            parts.add(condition(depth - 1, positionsBelow));
        }
        return kind == 4 ? new Condition.All(parts) : new Condition.AnyOf(parts);
    }

    private Condition is() {
        Option option = dice.oneOf(options);
        List<String> values = dice.some(option.valueNames());
        return Say.is(option.name().text(), values.toArray(String[]::new));
    }

    Need need(String part) {
        Condition when = dice.once(2) ? Condition.ALWAYS : anywhere();
        return dice.once(3)
                ? Say.joint(dice.oneOf("front-rail", "rear-rail"), part, dice.quantity(), when)
                : Say.each(part, dice.quantity(), when);
    }

    Expectation expectation(String part) {
        return dice.once(2)
                ? Say.expectPart(part, dice.quantity(), anywhere())
                : Say.expectPosition("position-" + dice.below(positions), dice.oneOf("1", "2"), anywhere());
    }
}
