package boltlore.choosing;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Condition;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import java.util.ArrayList;
import java.util.List;

/** Holds a condition against the orders that it should speak of: all of them, no other, and no word too many. */
final class Said {

    private Said() {}

    static void exactly(Condition condition, List<Choices> meant, List<Choices> all) {
        assertThat(holding(condition, all)).isEqualTo(meant);
        for (Condition shorter : shorter(condition)) {
            assertThat(holding(shorter, all)).as("shorter: %s", shorter).isNotEqualTo(meant);
        }
    }

    private static List<Choices> holding(Condition condition, List<Choices> all) {
        return all.stream().filter(order -> Conditions.holds(condition, order)).toList();
    }

    /** The condition without one of its ways, or without one test in one of them. */
    private static List<Condition> shorter(Condition condition) {
        List<Condition> shorter = new ArrayList<>();
        if (condition instanceof Condition.AnyOf any) {
            for (int i = 0; i < any.conditions().size(); i++) {
                shorter.add(new Condition.AnyOf(without(any.conditions(), i)));
                for (Condition way : shorter(any.conditions().get(i))) {
                    List<Condition> ways = new ArrayList<>(any.conditions());
                    ways.set(i, way);
                    shorter.add(new Condition.AnyOf(ways));
                }
            }
        } else if (condition instanceof Condition.All all) {
            for (int i = 0; i < all.conditions().size(); i++) {
                shorter.add(new Condition.All(without(all.conditions(), i)));
            }
        } else {
            shorter.add(Condition.ALWAYS);
        }
        return shorter;
    }

    private static List<Condition> without(List<Condition> conditions, int place) {
        List<Condition> rest = new ArrayList<>(conditions);
        rest.remove(place);
        return rest;
    }
}
