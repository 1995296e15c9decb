package boltlore.resolution.rules;

import boltlore.catalogue.Condition;
import boltlore.measure.PositionName;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A condition over filled positions as its cases: it holds when in one of them all of these positions are filled and
 * all of those are empty.
 */
record ConditionCases(List<Case> cases) {

    record Case(SortedSet<PositionName> filled, SortedSet<PositionName> empty) {

        Case and(Case other) {
            SortedSet<PositionName> bothFilled = new TreeSet<>(filled);
            bothFilled.addAll(other.filled);
            SortedSet<PositionName> bothEmpty = new TreeSet<>(empty);
            bothEmpty.addAll(other.empty);
            return new Case(bothFilled, bothEmpty);
        }
    }

    private static final Case OPEN = new Case(new TreeSet<>(), new TreeSet<>());

    /** @throws IllegalArgumentException where options have not been put in before */
    static ConditionCases of(Condition condition) {
        return new ConditionCases(cases(condition, true));
    }

    private static List<Case> cases(Condition condition, boolean wanted) {
        if (condition instanceof Condition.Not not) {
            return cases(not.condition(), !wanted);
        }
        if (condition instanceof Condition.All all) {
            return wanted ? together(all.conditions(), true) : either(all.conditions(), false);
        }
        if (condition instanceof Condition.AnyOf any) {
            return wanted ? either(any.conditions(), true) : together(any.conditions(), false);
        }
        if (condition instanceof Condition.Filled filled) {
            return List.of(single(filled.position(), wanted));
        }
        throw new IllegalArgumentException("Options are put in first: " + condition);
    }

    private static Case single(PositionName position, boolean wanted) {
        SortedSet<PositionName> one = new TreeSet<>(List.of(position));
        return wanted ? new Case(one, new TreeSet<>()) : new Case(new TreeSet<>(), one);
    }

    private static List<Case> either(List<Condition> conditions, boolean wanted) {
        return conditions.stream()
                .flatMap(condition -> cases(condition, wanted).stream())
                .distinct()
                .toList();
    }

    private static List<Case> together(List<Condition> conditions, boolean wanted) {
        List<Case> sofar = List.of(OPEN);
        for (Condition condition : conditions) {
            sofar = each(sofar, cases(condition, wanted));
        }
        return sofar.stream().distinct().toList();
    }

    private static List<Case> each(List<Case> lefts, List<Case> rights) {
        List<Case> both = new ArrayList<>();
        for (Case left : lefts) {
            rights.forEach(right -> both.add(left.and(right)));
        }
        return both;
    }
}
