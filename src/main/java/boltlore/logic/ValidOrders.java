package boltlore.logic;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.logicng.datastructures.Tristate;

/**
 * All complete choices of a family that break none of the given limits, as one incremental solver: asks whether some of
 * them fulfil further conditions, and shows one that does. Not safe to share between threads.
 */
public final class ValidOrders {

    private static final int MOST_IN_PAIRS = 8;

    private final Family family;
    private final SolverInternals.Search search = new SolverInternals.Search();
    private final OptionLiterals options;
    private final ConditionLiterals conditions;
    private final Deadline deadline;
    private final ValueLiterals values;
    private final OpenValues openValues;

    public ValidOrders(Family family, List<Limit> limits) {
        this(family, limits, Deadline.NONE);
    }

    public ValidOrders(Family family) {
        this(family, family.limits(), Deadline.NONE);
    }

    public ValidOrders(Family family, List<Limit> limits, Deadline deadline) {
        this.family = family;
        this.deadline = deadline;
        options = new OptionLiterals(family, search::fresh);
        conditions = new ConditionLiterals(search, options);
        family.options().forEach(option -> exactlyOne(options.of(option)));
        limits.forEach(limit -> conditions.hold(new Condition.Not(limit.forbids())));
        values = new ValueLiterals(options, search);
        openValues = new OpenValues(
                this, values, family, limits.stream().map(Limit::forbids).toList());
    }

    /** Of many, each new variable holds where one of the literals up to its place does. */
    private void exactlyOne(List<Integer> literals) {
        search.clause(literals.stream().mapToInt(Integer::intValue).toArray());
        if (literals.size() <= MOST_IN_PAIRS) {
            for (int i = 0; i < literals.size(); i++) {
                for (int j = i + 1; j < literals.size(); j++) {
                    search.clause(SolverInternals.not(literals.get(i)), SolverInternals.not(literals.get(j)));
                }
            }
            return;
        }
        int sofar = literals.get(0);
        for (int literal : literals.subList(1, literals.size())) {
            search.clause(SolverInternals.not(sofar), SolverInternals.not(literal));
            int next = search.fresh();
            search.clause(SolverInternals.not(sofar), next);
            search.clause(SolverInternals.not(literal), next);
            sofar = next;
        }
    }

    /** Whether some valid order fulfils all of these conditions, which range over options alone. */
    public boolean some(Condition... also) {
        return some(List.of(also));
    }

    public boolean some(Collection<Condition> also) {
        return someGiven(selectors(also));
    }

    boolean someGiven(List<Integer> given) {
        Tristate answer = answer(given, Integer.MAX_VALUE);
        if (answer == Tristate.UNDEF) {
            throw search.isLarge() ? new SolverInternals.Outgrown() : new Deadline.Passed();
        }
        return answer == Tristate.TRUE;
    }

    /**
     * The same, where an order that is found has many of these values, the first ones rather than the last. Values are
     * tried in that order as long as this is no trouble: the solver's own order finds its way out of any.
     */
    boolean someGiven(List<Integer> given, List<Choice> rather) {
        values.tryFirst(rather);
        Tristate answer = answer(given, ConflictBudget.FEW);
        values.tryAny();
        return answer == Tristate.UNDEF ? someGiven(given) : answer == Tristate.TRUE;
    }

    private Tristate answer(List<Integer> given, int mostConflicts) {
        deadline.check();
        return search.fulfil(
                new ConflictBudget(deadline, search, mostConflicts),
                given.stream().mapToInt(Integer::intValue).toArray());
    }

    /** The values that stand in some valid order which fulfils all of these conditions; none where there is no order. */
    public Set<Choice> values(Collection<Condition> given) {
        List<Integer> known = selectors(given);
        return someGiven(known) ? openValues.of(given, known) : Set.of();
    }

    /** The values that stand in some valid order with all of these literals, which may tell any values apart. */
    Set<Choice> valuesGiven(List<Integer> known) {
        return someGiven(known) ? openValues.of(known) : Set.of();
    }

    List<Integer> and(List<Integer> known, Choice choice) {
        List<Integer> all = new ArrayList<>(known);
        all.add(options.of(choice.option(), choice.value()));
        return all;
    }

    /**
     * Those of the conditions that the answer 'none' to the last question rests on: already they leave no order. Not
     * always the fewest.
     */
    public List<Condition> against(Collection<Condition> asked) {
        Set<Integer> refuted = refuted();
        return asked.stream()
                .filter(condition -> refuted.contains(selector(condition)))
                .toList();
    }

    /** Those of the literals given with the last question that its answer 'none' rests on. */
    Set<Integer> refuted() {
        Set<Integer> refuted = new LinkedHashSet<>();
        Arrays.stream(search.against()).forEach(refuted::add);
        return refuted;
    }

    /** Does something that teaches the solver much, and lets it forget all of that afterwards. */
    <T> T aside(Supplier<T> work) {
        int[] before = search.saveState();
        int known = conditions.remember();
        try {
            return work.get();
        } finally {
            search.loadState(before);
            conditions.forget(known);
        }
    }

    List<Integer> selectors(Collection<Condition> given) {
        return given.stream().map(this::selector).toList();
    }

    ConditionLiterals conditions() {
        return conditions;
    }

    SolverInternals.Search search() {
        return search;
    }

    Deadline deadline() {
        return deadline;
    }

    /** A valid order that fulfils all of these conditions, if there is one. */
    public Optional<Choices> witness(Collection<Condition> also) {
        return some(also) ? Optional.of(lastFound()) : Optional.empty();
    }

    public Optional<Choices> witness(Condition... also) {
        return witness(List.of(also));
    }

    /** The order that the last question with the answer 'some' has found. */
    Choices lastFound() {
        Map<OptionName, String> chosen = new HashMap<>();
        values.last().forEach(choice -> chosen.put(choice.option(), choice.value()));
        return Choices.of(family, chosen);
    }

    /** A literal that, when assumed, makes the condition hold. */
    int selector(Condition condition) {
        return conditions.of(condition);
    }
}
