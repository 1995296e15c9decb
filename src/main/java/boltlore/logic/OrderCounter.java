package boltlore.logic;

import boltlore.catalogue.BottomUp;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.choices.Mentions;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Counts the valid orders of a family exactly, by a binary decision diagram over its option values; gives up, and says
 * so, when the diagram grows beyond its limit. Not safe to share between threads, and of no use any more once the time was
 * up.
 */
public final class OrderCounter {

    /** Nodes that the diagram may take before counting is given up: about 100 MB. */
    static final int MOST_NODES = 2_000_000;

    /** A small family's diagram is built before a large table of known results is laid out. */
    private static final int SMALL = 64;

    private final OptionLiterals options;
    private final SolverInternals.Diagrams diagrams;
    private final Deadline deadline;
    private final Count.GivenUp givenUp = new Count.GivenUp("counting them outgrew the memory set aside for it");
    private final @Nullable Integer valid;
    private int variables;

    public OrderCounter(Family family) {
        this(family, family.limits(), Deadline.NONE, false);
    }

    /** @param backwards whether the diagram orders the options the other way round, for a second, independent count */
    public OrderCounter(Family family, List<Limit> limits, Deadline deadline, boolean backwards) {
        this.deadline = deadline;
        options = new OptionLiterals(family, () -> 2 * variables++);
        List<Condition> forbidden = limits.stream().map(Limit::forbids).toList();
        List<OptionName> order = new ArrayList<>(OptionOrder.arrange(family, forbidden, deadline));
        if (backwards) {
            Collections.reverse(order);
        }
        Map<OptionName, Option> byName = new HashMap<>();
        family.options().forEach(option -> byName.put(option.name(), option));
        int[] ordered = order.stream()
                .flatMap(name -> options.of(Objects.requireNonNull(byName.get(name))).stream())
                .mapToInt(literal -> literal / 2)
                .distinct()
                .toArray();
        int nodes = Math.max(ordered.length <= SMALL ? 10_000 : 100_000, ordered.length * 50);
        diagrams = new SolverInternals.Diagrams(ordered, nodes, MOST_NODES, deadline);
        valid = deeply(() -> unlessOutgrown(() -> valid(family, forbidden, order)));
    }

    private static <T> @Nullable T unlessOutgrown(Supplier<@Nullable T> diagram) {
        try {
            return diagram.get();
        } catch (SolverInternals.Outgrown tooLarge) {
            return null;
        }
    }

    private int valid(Family family, List<Condition> forbidden, List<OptionName> order) {
        int all = diagrams.always();
        for (Option option : family.options()) {
            all = diagrams.and(all, exactlyOne(option));
        }
        for (Condition limit : lowestFirst(forbidden, order)) {
            diagrams.check();
            all = diagrams.and(all, diagrams.negated(diagram(limit)));
        }
        return all;
    }

    private static List<Condition> lowestFirst(List<Condition> limits, List<OptionName> order) {
        record Placed(Condition limit, int lowest) {}
        Map<OptionName, Integer> places = new HashMap<>();
        order.forEach(name -> places.put(name, places.size()));
        return limits.stream()
                .map(limit -> new Placed(
                        limit,
                        Mentions.find(limit).stream()
                                .mapToInt(name -> places.getOrDefault(name, 0))
                                .max()
                                .orElse(0)))
                .sorted(Comparator.comparingInt(placed -> -placed.lowest()))
                .map(Placed::limit)
                .toList();
    }

    private int exactlyOne(Option option) {
        int none = diagrams.always();
        if (option.values().size() == 2) {
            return none;
        }
        int one = diagrams.never();
        List<Integer> values = new ArrayList<>(options.of(option));
        Collections.reverse(values);
        for (int value : values) {
            int is = diagrams.literal(value);
            int isNot = diagrams.negated(is);
            one = diagrams.or(diagrams.and(is, none), diagrams.and(isNot, one));
            none = diagrams.and(isNot, none);
        }
        return one;
    }

    /** The diagram of a condition over options; what several of its parts share is built once. */
    private int diagram(Condition condition) {
        IdentityHashMap<Condition, Integer> known = new IdentityHashMap<>();
        return new BottomUp<>(known, Condition::parts, part -> diagram(part, known)).of(condition);
    }

    private int diagram(Condition condition, Map<Condition, Integer> known) {
        if (condition instanceof Condition.Is is) {
            return is.values().stream()
                    .map(value -> diagrams.literal(options.of(is.option(), value)))
                    .reduce(diagrams.never(), diagrams::or);
        }
        Stream<Integer> parts = condition.parts().stream().map(known::get);
        if (condition instanceof Condition.All) {
            return parts.reduce(diagrams.always(), diagrams::and);
        }
        if (condition instanceof Condition.AnyOf) {
            return parts.reduce(diagrams.never(), diagrams::or);
        }
        if (condition instanceof Condition.Not) {
            return diagrams.negated(parts.findFirst().orElseThrow());
        }
        throw new IllegalArgumentException("'filled' is unfolded first: " + condition);
    }

    /** How many valid orders there are. */
    public Count all() {
        return count(() -> valid);
    }

    /** How many valid orders fulfil the condition, which ranges over options alone. */
    public Count with(Condition condition) {
        Integer every = valid;
        if (every == null) {
            return givenUp;
        }
        deadline.check();
        return count(() -> diagrams.and(every, diagram(condition)));
    }

    private Count count(Supplier<@Nullable Integer> diagram) {
        int before = diagrams.kept();
        Count counted = deeply(() -> {
            Integer found = unlessOutgrown(diagram);
            return found == null ? givenUp : new Count.Exactly(diagrams.count(found));
        });
        diagrams.letGo(before);
        return counted;
    }

    private <T extends @Nullable Object> T deeply(Supplier<T> work) {
        try {
            return DeepStack.call(deadline, work);
        } catch (Deadline.Passed e) {
            diagrams.abandon();
            throw e;
        }
    }

    /** Runs what recurses as deep as a family has values on a thread whose stack is large enough for it. */
    static final class DeepStack {

        private static final long STACK_BYTES = 512L << 20;

        private static final long LOOK_MILLIS = 50;

        private DeepStack() {}

        /**
         * What the work comes to.
         *
         * @throws Deadline.Passed where the time is up first; the work's thread then goes on until it looks at the time itself,
         *     and nothing that it works on may be used any more
         */
        static <T extends @Nullable Object> T call(Deadline deadline, Supplier<T> work) {
            Running<T> running = new Running<>(work);
            Thread thread = new Thread(null, running, "counting", STACK_BYTES);
            thread.setDaemon(true);
            thread.start();
            try {
                while (thread.isAlive()) {
                    thread.join(LOOK_MILLIS);
                    if (thread.isAlive()) {
                        deadline.check();
                    }
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new Deadline.Passed();
            }
            return running.result();
        }

        private static final class Running<T extends @Nullable Object> implements Runnable {

            private final Supplier<T> work;
            private @Nullable T result;
            private @Nullable RuntimeException failed;

            Running(Supplier<T> work) {
                this.work = work;
            }

            @Override
            public void run() {
                try {
                    result = work.get();
                } catch (RuntimeException e) {
                    failed = e;
                }
            }

            @SuppressWarnings("NullAway") // the result is null only where T allows it
            T result() {
                if (failed != null) {
                    throw failed;
                }
                return result;
            }
        }
    }
}
