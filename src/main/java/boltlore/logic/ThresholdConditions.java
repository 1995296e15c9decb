package boltlore.logic;

import boltlore.catalogue.BottomUp;
import boltlore.catalogue.Condition;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * When a sum over conditions reaches a number, as one condition: an exact split into the cases of its terms, in which
 * cases that leave the same rest share their further split.
 */
public final class ThresholdConditions {

    /** Cases that one sum may split into before it is given up. */
    static final int MOST_CASES = 20_000;

    private static final int MOST_AMOUNTS = 400;

    private static final int LOOKS_AT_TIME_EACH = 256;

    private record Case(int term, BigDecimal rest) {}

    /** Thrown inside only, where the split outgrows its bound. */
    private static final class TooManyCases extends RuntimeException {

        private static final long serialVersionUID = 1L;

        TooManyCases() {
            super("The split outgrows its bound", null, false, false);
        }
    }

    private final Deadline deadline;

    /** @param deadline at which the next sum ends with {@link Deadline.Passed} */
    public ThresholdConditions(Deadline deadline) {
        this.deadline = deadline;
    }

    /** When the terms that hold sum up to at least that much; empty where the split outgrows its bound. */
    public Optional<Condition> atLeast(List<Term> terms, BigDecimal least) {
        deadline.check();
        try {
            return Optional.of(new Split(gathered(terms)).from(new Case(0, least.stripTrailingZeros())));
        } catch (TooManyCases e) {
            return Optional.empty();
        }
    }

    /** When the one sum reaches the other. */
    public Optional<Condition> reaches(List<Term> sum, List<Term> other) {
        return atLeast(difference(sum, other), BigDecimal.ZERO);
    }

    /** By how much the sum is more than none, as a sum of its own; empty where it may come to too many amounts. */
    public Optional<List<Term>> positivePart(List<Term> terms) {
        SortedSet<BigDecimal> amounts = new TreeSet<>(Set.of(BigDecimal.ZERO));
        for (Term term : gathered(terms)) {
            deadline.check();
            List<BigDecimal> with =
                    amounts.stream().map(amount -> amount.add(term.quantity())).toList();
            amounts.addAll(with);
            if (amounts.size() > MOST_AMOUNTS) {
                return Optional.empty();
            }
        }
        List<Term> parts = new ArrayList<>();
        BigDecimal below = BigDecimal.ZERO;
        for (BigDecimal amount : amounts.tailSet(BigDecimal.ZERO)) {
            if (amount.signum() > 0) {
                Optional<Condition> reached = atLeast(terms, amount);
                if (reached.isEmpty()) {
                    return Optional.empty();
                }
                parts.add(new Term(amount.subtract(below), reached.get()));
                below = amount;
            }
        }
        return Optional.of(parts);
    }

    /** When the two sums differ. */
    public Optional<Condition> differ(List<Term> left, List<Term> right) {
        return reaches(left, right)
                .flatMap(more -> reaches(right, left).map(less -> Any.of(Any.but(more), Any.but(less))));
    }

    /** The one sum less the other. */
    public static List<Term> difference(List<Term> sum, List<Term> other) {
        List<Term> all = new ArrayList<>(sum);
        other.forEach(term -> all.add(new Term(term.quantity().negate(), term.when())));
        return all;
    }

    /** One term for each condition, the largest first: then the rest soon cannot change the answer any more. */
    private static List<Term> gathered(List<Term> terms) {
        StructuralNumbering numbers = new StructuralNumbering();
        Map<Integer, Term> byCondition = new LinkedHashMap<>();
        for (Term term : terms) {
            byCondition.merge(
                    numbers.of(term.when()),
                    term,
                    (one, other) -> new Term(one.quantity().add(other.quantity()), one.when()));
        }
        return byCondition.values().stream()
                .filter(term -> term.quantity().signum() != 0)
                .sorted(Comparator.comparing((Term term) -> term.quantity().abs())
                        .reversed())
                .toList();
    }

    /** Of one sum. */
    private final class Split {

        private final List<Term> terms;
        private final BigDecimal[] leastOfRest;
        private final BigDecimal[] mostOfRest;
        private final Map<Case, Condition> known = new HashMap<>();
        private final BottomUp<Case, Condition> cases = new BottomUp<>(known, this::open, this::split);

        Split(List<Term> terms) {
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

        /** When the terms from the case's own on sum up to at least its rest. */
        Condition from(Case at) {
            if (leastOfRest[at.term()].compareTo(at.rest()) >= 0) {
                return Condition.ALWAYS;
            }
            return mostOfRest[at.term()].compareTo(at.rest()) < 0 ? Any.NEVER : cases.of(at);
        }

        private boolean isOpen(Case at) {
            return leastOfRest[at.term()].compareTo(at.rest()) < 0 && mostOfRest[at.term()].compareTo(at.rest()) >= 0;
        }

        private List<Case> open(Case at) {
            if (known.size() > MOST_CASES) {
                throw new TooManyCases();
            }
            if (known.size() % LOOKS_AT_TIME_EACH == 0) {
                deadline.check();
            }
            return Stream.of(with(at), without(at)).filter(this::isOpen).toList();
        }

        private Case with(Case at) {
            BigDecimal rest = at.rest().subtract(terms.get(at.term()).quantity());
            return new Case(at.term() + 1, rest.stripTrailingZeros());
        }

        private static Case without(Case at) {
            return new Case(at.term() + 1, at.rest());
        }

        /** Whichever way the term turns out, the case that needs less of the rest includes the other. */
        private Condition split(Case at) {
            Term term = terms.get(at.term());
            Condition with = from(with(at));
            Condition without = from(without(at));
            if (with == without) {
                return with;
            }
            return term.quantity().signum() > 0
                    ? Any.of(without, All.of(term.when(), with))
                    : Any.of(with, All.of(Any.but(term.when()), without));
        }
    }
}
