package boltlore.logic;

import boltlore.catalogue.BottomUp;
import boltlore.catalogue.Condition;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** Numbers conditions so that two have the same number when they say the same in the same words. */
public final class StructuralNumbering {

    /** A condition by its own words and the numbers of what it is made of. */
    private record Shape(String kind, Object own, List<Integer> parts) {}

    private final Map<Shape, Integer> numbers = new HashMap<>();
    private final BottomUp<Condition, Integer> known =
            new BottomUp<>(new IdentityHashMap<>(), Condition::parts, this::number);

    /** The number of the condition. */
    public int of(Condition condition) {
        return known.of(condition);
    }

    private int number(Condition condition) {
        return numbers.computeIfAbsent(shape(condition), shape -> numbers.size());
    }

    private Shape shape(Condition condition) {
        if (condition instanceof Condition.All all) {
            return new Shape("all", "", each(all.conditions()));
        }
        if (condition instanceof Condition.AnyOf any) {
            return new Shape("any", "", each(any.conditions()));
        }
        if (condition instanceof Condition.Not not) {
            return new Shape("not", "", List.of(of(not.condition())));
        }
        return new Shape("plain", condition, List.of());
    }

    private List<Integer> each(List<Condition> conditions) {
        return conditions.stream().map(this::of).sorted().distinct().toList();
    }
}
