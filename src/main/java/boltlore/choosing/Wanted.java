package boltlore.choosing;

import boltlore.catalogue.Condition;
import boltlore.choices.Choice;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Choices as conditions. */
final class Wanted {

    private Wanted() {}

    static Condition of(Choice choice) {
        return new Condition.Is(choice.option(), new TreeSet<>(Set.of(choice.value())));
    }

    static List<Condition> all(Collection<Choice> choices) {
        return choices.stream().map(Wanted::of).toList();
    }
}
