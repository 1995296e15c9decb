package boltlore.logic;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.choices.Choices;
import boltlore.choices.Mentions;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A condition said again as 'this and this, or that and that': it holds for the same valid orders, and neither an 'or'
 * nor an 'and' in it can be dropped. Found way by way: from one order to the widest term around it.
 */
public final class PrimeImplicantCover {

    private final ValidOrders orders;
    private final Family family;
    private final Collection<Condition> given;
    private final Condition condition;
    private final Condition not;
    private final Map<OptionName, Map<Set<String>, Condition>> tests = new HashMap<>();

    private PrimeImplicantCover(ValidOrders orders, Family family, Collection<Condition> given, Condition condition) {
        this.orders = orders;
        this.family = family;
        this.given = given;
        this.condition = condition;
        this.not = new Condition.Not(condition);
    }

    /**
     * Says the condition plainly.
     *
     * @param condition over options alone
     * @param given what the orders fulfil in any case
     * @param mostWays how many ways, joined by 'or', are still plain
     * @return empty where it takes more ways than that
     */
    public static Optional<Condition> compute(
            ValidOrders orders, Family family, Condition condition, Collection<Condition> given, int mostWays) {
        PrimeImplicantCover plain = new PrimeImplicantCover(orders, family, given, condition);
        if (!orders.some(plain.and(plain.not))) {
            return Optional.of(Condition.ALWAYS);
        }
        return plain.ways(mostWays).map(Any::of);
    }

    private Optional<List<Condition>> ways(int most) {
        List<Condition> ways = new ArrayList<>();
        Optional<Choices> witness = orders.witness(and(condition));
        while (witness.isPresent() && ways.size() < most) {
            ways.add(widest(witness.get()));
            witness = orders.witness(without(ways, and(condition)));
        }
        return witness.isPresent() ? Optional.empty() : Optional.of(needed(ways));
    }

    private static List<Condition> without(List<Condition> ways, List<Condition> all) {
        ways.forEach(way -> all.add(new Condition.Not(way)));
        return all;
    }

    /** Ways that are not already covered by the others. */
    private List<Condition> needed(List<Condition> ways) {
        List<Condition> needed = new ArrayList<>(ways);
        for (Condition way : ways) {
            List<Condition> others = new ArrayList<>(needed);
            others.remove(way);
            needed = orders.some(without(others, and(way))) ? needed : others;
        }
        return needed;
    }

    private Condition widest(Choices order) {
        Map<OptionName, SortedSet<String>> term = new LinkedHashMap<>();
        Set<OptionName> mentioned = Mentions.find(condition);
        order.values().forEach((option, value) -> {
            if (mentioned.contains(option)) {
                term.put(option, new TreeSet<>(Set.of(value)));
            }
        });
        List.copyOf(term.keySet()).forEach(option -> drop(term, option));
        List.copyOf(term.keySet()).forEach(option -> widen(term, option));
        return condition(term);
    }

    private void drop(Map<OptionName, SortedSet<String>> term, OptionName option) {
        Map<OptionName, SortedSet<String>> without = new LinkedHashMap<>(term);
        without.remove(option);
        if (implies(without)) {
            term.remove(option);
        }
    }

    private void widen(Map<OptionName, SortedSet<String>> term, OptionName name) {
        for (String value : family.option(name).orElseThrow().valueNames()) {
            SortedSet<String> values = new TreeSet<>(term.getOrDefault(name, new TreeSet<>()));
            boolean further = values.add(value);
            if (further
                    && possible(with(term, name, new TreeSet<>(Set.of(value))))
                    && implies(with(term, name, values))) {
                term.put(name, values);
            }
        }
    }

    private static Map<OptionName, SortedSet<String>> with(
            Map<OptionName, SortedSet<String>> term, OptionName name, SortedSet<String> values) {
        Map<OptionName, SortedSet<String>> changed = new LinkedHashMap<>(term);
        changed.put(name, values);
        return changed;
    }

    private boolean possible(Map<OptionName, SortedSet<String>> term) {
        return orders.some(and(condition(term)));
    }

    private boolean implies(Map<OptionName, SortedSet<String>> term) {
        List<Condition> all = and(condition(term));
        all.add(not);
        return !orders.some(all);
    }

    private Condition condition(Map<OptionName, SortedSet<String>> term) {
        List<Condition> all = new ArrayList<>();
        term.forEach((option, values) -> all.add(tests.computeIfAbsent(option, name -> new HashMap<>())
                .computeIfAbsent(values, same -> new Condition.Is(option, values))));
        return All.of(all);
    }

    private List<Condition> and(Condition also) {
        List<Condition> all = new ArrayList<>(given);
        all.add(also);
        return all;
    }
}
