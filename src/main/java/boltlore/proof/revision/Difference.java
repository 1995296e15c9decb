package boltlore.proof.revision;

import boltlore.catalogue.Condition;
import boltlore.logic.StructuralNumbering;
import boltlore.logic.Term;
import boltlore.logic.Truth;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is left of two sums when their equal terms are cancelled: later less earlier. */
record Difference(List<Term> terms) {

    static Difference of(List<Term> before, List<Term> after, StructuralNumbering sameness) {
        Map<Integer, BigDecimal> sums = new LinkedHashMap<>();
        Map<Integer, Condition> conditions = new LinkedHashMap<>();
        for (Term term : after) {
            int number = sameness.of(term.when());
            conditions.putIfAbsent(number, term.when());
            sums.merge(number, term.quantity(), BigDecimal::add);
        }
        for (Term term : before) {
            int number = sameness.of(term.when());
            conditions.putIfAbsent(number, term.when());
            sums.merge(number, term.quantity().negate(), BigDecimal::add);
        }
        List<Term> rest = new ArrayList<>();
        conditions.forEach((number, when) -> {
            BigDecimal sum = sums.getOrDefault(number, BigDecimal.ZERO);
            if (sum.signum() != 0) {
                rest.add(new Term(sum, when));
            }
        });
        return new Difference(rest);
    }

    boolean isNothing() {
        return terms.isEmpty();
    }

    /** How many more there are in an order of the later revision. */
    BigDecimal in(Truth order) {
        return terms.stream()
                .filter(term -> order.of(term.when()))
                .map(Term::quantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    List<Condition> conditions() {
        return terms.stream().map(Term::when).toList();
    }
}
