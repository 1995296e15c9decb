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
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Finds the values that stand in some valid order. Each order found shows one value of every option; values of an option
 * that no limit tells apart stand or fall together, so that one of them is asked about for all.
 */
final class OpenValues {

    private final List<List<Choice>> alike = new ArrayList<>();

    OpenValues(Family family, Collection<Condition> limits) {
        ValueTests tests = new ValueTests(limits);
        for (Option option : family.options()) {
            Map<Set<Set<String>>, List<Choice>> groups = new LinkedHashMap<>();
            for (String value : option.valueNames()) {
                groups.computeIfAbsent(tests.passedBy(option.name(), value), same -> new ArrayList<>())
                        .add(new Choice(option.name(), value));
            }
            alike.addAll(groups.values());
        }
    }

    /** Asks whether some order has a value in addition to what is given. */
    interface Question {
        boolean some(Choice choice);
    }

    /**
     * The open values, when some valid order fulfils what is given and has just been found.
     *
     * @param shown the values of the order found last
     */
    Set<Choice> of(Collection<Condition> given, Question question, Supplier<? extends Collection<Choice>> shown) {
        Set<OptionName> settled = new HashSet<>();
        Set<OptionName> toldApart = new HashSet<>();
        for (Condition condition : given) {
            boolean settles =
                    condition instanceof Condition.Is is && is.values().size() == 1;
            (settles ? settled : toldApart).addAll(Mentions.of(condition));
        }
        Set<Choice> open = new HashSet<>(shown.get());
        for (List<Choice> group : alike) {
            OptionName option = group.get(0).option();
            if (toldApart.contains(option)) {
                ask(group, open, question, shown);
            } else if (!settled.contains(option)) {
                askOne(group, open, question, shown);
            }
        }
        return open;
    }

    /** One for all. */
    private static void askOne(
            List<Choice> group, Set<Choice> open, Question question, Supplier<? extends Collection<Choice>> shown) {
        if (Collections.disjoint(open, group)) {
            ask(group.subList(0, 1), open, question, shown);
        }
        if (!Collections.disjoint(open, group)) {
            open.addAll(group);
        }
    }

    /** The open values, when what is given may tell any two values apart. */
    Set<Choice> each(Question question, Supplier<? extends Collection<Choice>> shown) {
        Set<Choice> open = new HashSet<>(shown.get());
        alike.forEach(group -> ask(group, open, question, shown));
        return open;
    }

    private static void ask(
            List<Choice> asked, Set<Choice> open, Question question, Supplier<? extends Collection<Choice>> shown) {
        for (Choice choice : asked) {
            if (!open.contains(choice) && question.some(choice)) {
                open.addAll(shown.get());
            }
        }
    }
}
