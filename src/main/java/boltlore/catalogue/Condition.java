package boltlore.catalogue;

import boltlore.measure.OptionName;
import boltlore.measure.PositionName;
import java.util.List;
import java.util.SortedSet;

/** The one small closed language in which everything that decides a kit is said. */
public sealed interface Condition {

    /** Holds for every order: written <code>{}</code>. */
    Condition ALWAYS = new All(List.of());

    /** The option has one of these values. */
    record Is(OptionName option, SortedSet<String> values) implements Condition {}

    /** All of them hold; with none, always. */
    record All(List<Condition> conditions) implements Condition {
        public All {
            conditions = List.copyOf(conditions);
        }
    }

    /** At least one of them holds; with none, never. */
    record AnyOf(List<Condition> conditions) implements Condition {
        public AnyOf {
            conditions = List.copyOf(conditions);
        }
    }

    record Not(Condition condition) implements Condition {}

    /** A line of that position is called for. */
    record Filled(PositionName position) implements Condition {}

    /** What it is made of. */
    default List<Condition> parts() {
        if (this instanceof All all) {
            return all.conditions();
        }
        if (this instanceof AnyOf any) {
            return any.conditions();
        }
        return this instanceof Not not ? List.of(not.condition()) : List.of();
    }

    default boolean isAlways() {
        return this instanceof All all && all.conditions().isEmpty();
    }
}
