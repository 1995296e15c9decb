package boltlore.logic;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.choices.Mentions;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds the values that stand in some valid order. What unit propagation excludes is closed; each order found shows one
 * value of every option, if it can one not seen before; values of an option that no limit tells apart stand or fall
 * together, so that one of them is asked about for all.
 */
final class OpenValues {

    private final ValidOrders orders;
    private final ValueLiterals values;
    private final List<List<Choice>> alike = new ArrayList<>();

    OpenValues(ValidOrders orders, ValueLiterals values, Family family, Collection<Condition> limits) {
        this.orders = orders;
        this.values = values;
        ValueTests tests = new ValueTests(limits);
        family.options().forEach(option -> alike.addAll(groups(option, tests)));
    }

    private static Collection<List<Choice>> groups(Option option, ValueTests tests) {
        Map<Set<Set<String>>, List<Choice>> groups = new LinkedHashMap<>();
        for (String value : option.valueNames()) {
            groups.computeIfAbsent(tests.passedBy(option.name(), value), same -> new ArrayList<>())
                    .add(new Choice(option.name(), value));
        }
        return groups.values();
    }

    /** The open values of orders that fulfil these conditions, known by these literals; there is such an order. */
    Set<Choice> of(Collection<Condition> given, List<Integer> known) {
        Set<OptionName> toldApart = new HashSet<>();
        given.forEach(condition -> toldApart.addAll(Mentions.find(condition)));
        Search search = new Search(known);
        alike.forEach(group -> search.ask(group, toldApart.contains(group.get(0).option())));
        return search.open;
    }

    /** The same where the literals may tell any two values apart. */
    Set<Choice> of(List<Integer> known) {
        Search search = new Search(known);
        alike.forEach(search::askEach);
        return search.open;
    }

    private final class Search {

        private final List<Integer> known;
        private final Set<Choice> open;
        private final Set<Choice> settled;

        Search(List<Integer> known) {
            this.known = known;
            this.open = new HashSet<>(values.last());
            this.settled = values.excluded(known);
            settled.addAll(open);
        }

        void ask(List<Choice> group, boolean toldApart) {
            if (toldApart) {
                askEach(group);
            } else {
                askOneFor(group);
            }
        }

        private void askOneFor(List<Choice> group) {
            if (Collections.disjoint(open, group)) {
                askEach(group.subList(0, 1));
            }
            if (!Collections.disjoint(open, group)) {
                open.addAll(group);
                settled.addAll(group);
            }
        }

        void askEach(List<Choice> group) {
            for (Choice choice : group) {
                if (settled.add(choice)) {
                    ask(choice);
                }
            }
        }

        private void ask(Choice choice) {
            if (orders.someGiven(orders.and(known, choice), values.allBut(settled))) {
                open.addAll(values.last());
                settled.addAll(open);
            }
        }
    }

    /** The sets of values that conditions ask about: two values that are in the same ones are told apart by none of them. */
    static final class ValueTests {

        private final Map<OptionName, Map<String, Set<Set<String>>>> passed = new HashMap<>();

        ValueTests(Collection<Condition> conditions) {
            conditions.forEach(this::add);
        }

        /** The sets that the value is in. */
        Set<Set<String>> passedBy(OptionName option, String value) {
            return passed.getOrDefault(option, Map.of()).getOrDefault(value, Set.of());
        }

        private void add(Condition condition) {
            if (condition instanceof Condition.Is is) {
                Map<String, Set<Set<String>>> byValue = passed.computeIfAbsent(is.option(), option -> new HashMap<>());
                is.values()
                        .forEach(value -> byValue.computeIfAbsent(value, name -> new HashSet<>())
                                .add(is.values()));
            }
            condition.parts().forEach(this::add);
        }
    }
}
