package boltlore.logic;

import boltlore.catalogue.Condition;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * When a sum over conditions reaches a number, as one condition: an exact split into the cases of its terms, in which
 * cases that leave the same rest share their further split.
 */
public final class Sums {

    /** Cases that one sum may split into before it is given up. */
    static final int MOST_CASES = 20_000;

    private record Case(int term, BigDecimal rest) {}

    /** Thrown inside only, where the split outgrows its bound. */
    private static final class TooManyCases extends RuntimeException {

        private static final long serialVersionUID = 1L;

        TooManyCases() {
            super("The split outgrows its bound", null, false, false);
        }
    }

    private final List<Term> terms;
    private final BigDecimal[] leastOfRest;
    private final BigDecimal[] mostOfRest;
    private final Map<Case, Condition> known = new HashMap<>();

    private Sums(List<Term> terms) {
        this.terms = terms;
        leastOfRest = new BigDecimal[terms.size() + 1];
        mostOfRest = new BigDecimal[terms.size() + 1];
        leastOfRest[terms.size()] = BigDecimal.ZERO;
        mostOfRest[terms.size()] = BigDecimal.ZERO;
        for (int i = terms.size() - 1; i >= 0; i--) {
            BigDecimal quantity = terms.get(i).quantity();
            leastOfRest[i] = leastOfRest[i + 1].add(quantity.min(BigDecimal.ZERO));
            mostOfRest[i] = mostOfRest[i + 1].add(quantity.max(BigDecimal.ZERO));
        }
    }

    /** When the terms that hold sum up to at least that much; empty where the split outgrows its bound. */
    public static Optional<Condition> atLeast(List<Term> terms, BigDecimal least) {
        try {
            return Optional.of(new Sums(gathered(terms)).from(0, least.stripTrailingZeros()));
        } catch (TooManyCases e) {
            return Optional.empty();
        }
    }

    /** When the one sum reaches the other. */
    public static Optional<Condition> reaches(List<Term> sum, List<Term> other) {
        List<Term> all = new ArrayList<>(sum);
        other.forEach(term -> all.add(new Term(term.quantity().negate(), term.when())));
        return atLeast(all, BigDecimal.ZERO);
    }

    /** When the two sums differ. */
    public static Optional<Condition> differ(List<Term> left, List<Term> right) {
        return reaches(left, right)
                .flatMap(more ->
                        reaches(right, left).map(less -> Any.of(new Condition.Not(more), new Condition.Not(less))))
                .map(Sums::simple);
    }

    private static Condition simple(Condition condition) {
        if (condition instanceof Condition.AnyOf any) {
            return Any.of(any.conditions().stream().map(Sums::simple).toList());
        }
        if (condition instanceof Condition.Not not && not.condition().isAlways()) {
            return Any.NEVER;
        }
        return condition instanceof Condition.Not not && not.condition().equals(Any.NEVER)
                ? Condition.ALWAYS
                : condition;
    }

    /** One term for each condition, the largest first: then the rest soon cannot change the answer any more. */
    private static List<Term> gathered(List<Term> terms) {
        Sameness sameness = new Sameness();
        Map<Integer, Term> byCondition = new LinkedHashMap<>();
        for (Term term : terms) {
            byCondition.merge(
                    sameness.of(term.when()),
                    term,
                    (one, other) -> new Term(one.quantity().add(other.quantity()), one.when()));
        }
        return byCondition.values().stream()
                .filter(term -> term.quantity().signum() != 0)
                .sorted(Comparator.comparing((Term term) -> term.quantity().abs())
                        .reversed())
                .toList();
    }

    /** When the terms from that one on sum up to at least that much. */
    private Condition from(int term, BigDecimal least) {
        if (leastOfRest[term].compareTo(least) >= 0) {
            return Condition.ALWAYS;
        }
        if (mostOfRest[term].compareTo(least) < 0) {
            return Any.NEVER;
        }
        Case here = new Case(term, least);
        Condition result = known.get(here);
        if (result == null) {
            result = split(terms.get(term), term + 1, least);
            known.put(here, result);
            if (known.size() > MOST_CASES) {
                throw new TooManyCases();
            }
        }
        return result;
    }

    /** Whichever way the term turns out, the case that needs less of the rest includes the other. */
    private Condition split(Term term, int next, BigDecimal least) {
        Condition with = from(next, least.subtract(term.quantity()).stripTrailingZeros());
        Condition without = from(next, least);
        if (with == without) {
            return with;
        }
        return term.quantity().signum() > 0
                ? Any.of(without, All.of(term.when(), with))
                : Any.of(with, All.of(new Condition.Not(term.when()), without));
    }
}
