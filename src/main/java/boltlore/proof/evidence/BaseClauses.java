package boltlore.proof.evidence;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.proof.Question;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What all statements about a family have in common: each option has exactly one value, and a variable for each limit
 * that holds exactly when the limit is kept. Whether limits are kept is said by each statement.
 */
final class BaseClauses {

    private final ValueVariables values;
    private final Clauses clauses;
    private final Map<String, Integer> kept = new LinkedHashMap<>();
    private final int allKept;

    BaseClauses(Family family) {
        values = new ValueVariables(family);
        clauses = new Clauses(values.all().size());
        for (Option option : family.options()) {
            clauses.exactlyOne(values.of(option));
        }
        ConditionClauses conditions = new ConditionClauses(values, clauses);
        for (Limit limit : family.limits()) {
            kept.put(limit.name(), named(conditions.of(new Condition.Not(limit.forbids()))));
        }
        allKept = clauses.and(new ArrayList<>(kept.values()));
    }

    /** A variable of its own for the literal, so that it can bear a name. */
    private int named(int literal) {
        return clauses.or(List.of(literal));
    }

    ValueVariables values() {
        return values;
    }

    Clauses clauses() {
        return clauses;
    }

    /** The literals that must hold so that these limits are kept. */
    List<Integer> keeping(Question.Under under) {
        Limit but = under.but();
        if (under.keeps() == Question.Keeps.NONE) {
            return List.of();
        }
        return but == null
                ? List.of(allKept)
                : kept.entrySet().stream()
                        .filter(limit -> !limit.getKey().equals(but.name()))
                        .map(Map.Entry::getValue)
                        .toList();
    }

    int kept(Limit limit) {
        return kept.getOrDefault(limit.name(), 0);
    }

    /** What each variable stands for, as comments. */
    List<String> legend() {
        List<String> legend = new ArrayList<>();
        values.all().forEach((choice, number) -> legend.add(number + " " + choice));
        kept.forEach((limit, number) -> legend.add(number + " limit " + limit + " is kept"));
        legend.add(Math.abs(allKept) + (allKept < 0 ? " not" : "") + " all limits are kept");
        return legend;
    }
}
