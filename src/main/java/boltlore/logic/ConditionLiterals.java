package boltlore.logic;

import boltlore.catalogue.BottomUp;
import boltlore.catalogue.Condition;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Conditions over options as literals: one variable for each part, shared by all conditions that say the same in it, and
 * clauses only in the direction that is asked for (Plaisted and Greenbaum, A structure-preserving clause form translation,
 * Journal of Symbolic Computation 2, 1986; from memory). Takes as many clauses as the conditions have different parts.
 */
final class ConditionLiterals {

    private final SolverInternals.Search search;
    private final OptionLiterals options;
    private final IdentityHashMap<Condition, Integer> known = new IdentityHashMap<>();
    private final BottomUp<Condition, Integer> literals = new BottomUp<>(known, Condition::parts, this::literal);

    /** By each variable that stands for a disjunction: what it is of. */
    private final Map<Integer, int[]> disjunctions = new HashMap<>();

    private final Map<List<Integer>, Integer> byParts = new HashMap<>();

    /** Literals whose meaning is in the clauses: where they hold, so does what they stand for. */
    private final Set<Integer> said = new HashSet<>();

    private final int always;

    /** How to forget what was made known since a moment, the last first. */
    private final Deque<Runnable> undoing = new ArrayDeque<>();

    private int remembering;

    ConditionLiterals(SolverInternals.Search search, OptionLiterals options) {
        this.search = search;
        this.options = options;
        this.always = search.fresh();
        search.clause(always);
    }

    /** Holds in every order. */
    int always() {
        return always;
    }

    /**
     * A literal that, when assumed, makes the condition hold.
     *
     * @throws IllegalArgumentException where 'filled' has not been unfolded before
     */
    int of(Condition condition) {
        return meant(number(condition));
    }

    /** The literal without its meaning: to compare conditions, or to be {@link #meant}. */
    int number(Condition condition) {
        return literals.of(condition);
    }

    private int literal(Condition condition) {
        if (!known.containsKey(condition)) {
            undo(() -> known.remove(condition));
        }
        if (condition instanceof Condition.Is is) {
            return or(is.values().stream()
                    .map(value -> options.of(is.option(), value))
                    .toList());
        }
        if (condition instanceof Condition.Not not) {
            return SolverInternals.not(literals.of(not.condition()));
        }
        if (condition instanceof Condition.All all) {
            return SolverInternals.not(or(all.conditions().stream()
                    .map(part -> SolverInternals.not(literals.of(part)))
                    .toList()));
        }
        if (condition instanceof Condition.AnyOf any) {
            return or(any.conditions().stream().map(literals::of).toList());
        }
        throw new IllegalArgumentException("'filled' is unfolded first: " + condition);
    }

    private int or(List<Integer> some) {
        SortedSet<Integer> parts = new TreeSet<>(some);
        parts.remove(SolverInternals.not(always));
        boolean holds = parts.contains(always)
                || parts.stream().anyMatch(part -> (part & 1) == 0 && parts.contains(SolverInternals.not(part)));
        if (holds) {
            return always;
        }
        return switch (parts.size()) {
            case 0 -> SolverInternals.not(always);
            case 1 -> parts.first();
            default -> disjunction(List.copyOf(parts));
        };
    }

    private int disjunction(List<Integer> parts) {
        Integer there = byParts.get(parts);
        if (there != null) {
            return there;
        }
        int literal = search.fresh();
        byParts.put(parts, literal);
        disjunctions.put(literal, parts.stream().mapToInt(Integer::intValue).toArray());
        undo(() -> {
            byParts.remove(parts);
            disjunctions.remove(literal);
        });
        return literal;
    }

    /** Says in clauses what the literal, when it holds, stands for. */
    int meant(int literal) {
        if (!disjunctions.containsKey(literal & ~1) || said.contains(literal)) {
            return literal;
        }
        Deque<Integer> open = new ArrayDeque<>(List.of(literal));
        while (!open.isEmpty()) {
            int next = open.pop();
            int[] parts = disjunctions.get(next & ~1);
            if (parts == null || !said.add(next)) {
                continue;
            }
            undo(() -> said.remove(next));
            boolean negated = (next & 1) == 1;
            if (negated) {
                for (int part : parts) {
                    search.clause(SolverInternals.not(next), SolverInternals.not(part));
                    open.push(SolverInternals.not(part));
                }
            } else {
                int[] clause = Arrays.copyOf(parts, parts.length + 1);
                clause[parts.length] = SolverInternals.not(next);
                search.clause(clause);
                Arrays.stream(parts).forEach(open::push);
            }
        }
        return literal;
    }

    /** From now on every order fulfils the condition; never to be forgotten. */
    void hold(Condition condition) {
        Optional<int[]> plain = plain(condition);
        if (plain.isPresent()) {
            search.clause(plain.get());
            return;
        }
        Deque<Integer> open = new ArrayDeque<>(List.of(number(condition)));
        while (!open.isEmpty()) {
            int next = open.pop();
            int[] parts = disjunctions.get(next & ~1);
            if (parts == null) {
                search.clause(next);
            } else if ((next & 1) == 1) {
                Arrays.stream(parts).map(SolverInternals::not).forEach(open::push);
            } else {
                Arrays.stream(parts).forEach(this::meant);
                search.clause(parts);
            }
        }
    }

    /**
     * The literals of which one must hold, where the condition says no more than that of values; nothing is kept of it, for
     * a family may have some hundred thousand such limits.
     */
    private Optional<int[]> plain(Condition condition) {
        record Signed(Condition condition, boolean holds) {}
        SortedSet<Integer> clause = new TreeSet<>();
        Deque<Signed> open = new ArrayDeque<>(List.of(new Signed(condition, true)));
        while (!open.isEmpty()) {
            Signed next = open.pop();
            if (next.condition() instanceof Condition.Not not) {
                open.push(new Signed(not.condition(), !next.holds()));
            } else if (next.condition() instanceof Condition.Is is
                    && (next.holds() || is.values().size() == 1)) {
                is.values().stream()
                        .map(value -> options.of(is.option(), value))
                        .forEach(literal -> clause.add(next.holds() ? literal : SolverInternals.not(literal)));
            } else if (next.holds()
                    ? next.condition() instanceof Condition.AnyOf
                    : next.condition() instanceof Condition.All) {
                next.condition().parts().forEach(part -> open.push(new Signed(part, next.holds())));
            } else {
                return Optional.empty();
            }
        }
        return Optional.of(clause.stream().mapToInt(Integer::intValue).toArray());
    }

    private void undo(Runnable step) {
        if (remembering > 0) {
            undoing.push(step);
        }
    }

    /** What is made known from now on can be forgotten. */
    int remember() {
        remembering++;
        return undoing.size();
    }

    /** Forgets all that was made known since then; the search has to forget it, too. */
    void forget(int since) {
        while (undoing.size() > since) {
            undoing.pop().run();
        }
        remembering--;
    }
}
