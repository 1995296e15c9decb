package boltlore.choosing;

import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.FinishRule;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** The finishes that a coated part may take in a family, and in which orders it takes which. */
final class FinishCases {

    /** @param finish its name, or empty where the part takes none */
    record Case(String finish, Condition when) {}

    static Case always(String finish) {
        return new Case(finish, Condition.ALWAYS);
    }

    private static final List<Case> NONE = List.of(new Case("", Condition.ALWAYS));

    private final Family family;

    FinishCases(Family family) {
        this.family = family;
    }

    /** Together they hold for every order. */
    List<Case> of(Part part) {
        CoatingSpec coat = part.coat();
        if (coat == null) {
            return NONE;
        }
        FinishRule rule = coat.role() == null
                ? new FinishRule.Fixed(String.valueOf(coat.finish()))
                : family.finishes().get(coat.role());
        if (rule instanceof FinishRule.DecidedBy decided) {
            return family.option(decided.option()).map(FinishCases::decidedBy).orElse(NONE);
        }
        return rule == null ? NONE : List.of(new Case(((FinishRule.Fixed) rule).finish(), Condition.ALWAYS));
    }

    private static List<Case> decidedBy(Option option) {
        Map<String, SortedSet<String>> values = new TreeMap<>();
        for (OptionValue value : option.values()) {
            String finish = value.facts().finish();
            values.computeIfAbsent(finish == null ? "" : finish, name -> new TreeSet<>())
                    .add(value.value());
        }
        List<Case> cases = new ArrayList<>();
        values.forEach((finish, same) -> cases.add(new Case(finish, new Condition.Is(option.name(), same))));
        return cases;
    }
}
