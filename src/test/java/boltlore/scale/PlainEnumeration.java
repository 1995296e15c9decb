package boltlore.scale;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.choices.Mentions;
import boltlore.logic.Deadline;
import boltlore.measure.OptionName;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Nested loops: one option after the other gets each of its values, and a limit is looked at as soon as its last option has
 * one. Values are numbers, conditions are looked up by them.
 */
final class PlainEnumeration implements Asked.Way {

    private static final int LOOK_EACH = 1 << 14;

    private record Cost(Predicate<int[]> when, long cents) {}

    private final List<Option> options;
    private final Map<OptionName, Integer> places = new HashMap<>();
    private final List<List<Predicate<int[]>>> forbidden = new ArrayList<>();
    private final List<Cost> costs;
    private final Deadline deadline;
    private int looks;

    PlainEnumeration(Asked asked, Deadline deadline) {
        this.deadline = deadline;
        options = asked.family().options();
        for (Option option : options) {
            places.put(option.name(), places.size());
            forbidden.add(new ArrayList<>());
        }
        for (Condition limit : asked.forbidden()) {
            int last = Mentions.find(limit).stream().mapToInt(places::get).max().orElseThrow();
            forbidden.get(last).add(read(limit));
        }
        costs = asked.cents().entrySet().stream()
                .map(each -> new Cost(read(each.getKey()), each.getValue()))
                .toList();
    }

    private Predicate<int[]> read(Condition condition) {
        if (condition instanceof Condition.Is is) {
            int place = places.get(is.option());
            List<String> names = options.get(place).valueNames();
            boolean[] in = new boolean[names.size()];
            is.values().forEach(value -> in[names.indexOf(value)] = true);
            return values -> in[values[place]];
        }
        List<Predicate<int[]>> parts =
                condition.parts().stream().map(this::read).toList();
        if (condition instanceof Condition.Not) {
            return parts.get(0).negate();
        }
        return condition instanceof Condition.All
                ? values -> parts.stream().allMatch(part -> part.test(values))
                : values -> parts.stream().anyMatch(part -> part.test(values));
    }

    @Override
    public Set<Choice> open(List<Choice> kept) {
        Set<Choice> open = new HashSet<>();
        int all = options.stream().mapToInt(option -> option.values().size()).sum();
        boolean[][] seen = new boolean[options.size()][all];
        visit(kept, values -> {
            for (int place = 0; place < values.length; place++) {
                seen[place][values[place]] = true;
            }
            return true;
        });
        for (int place = 0; place < seen.length; place++) {
            Option option = options.get(place);
            for (int value = 0; value < option.values().size(); value++) {
                if (seen[place][value]) {
                    open.add(new Choice(option.name(), option.valueNames().get(value)));
                }
            }
        }
        return open;
    }

    @Override
    public boolean possible(List<Choice> kept) {
        return !visit(kept, values -> false);
    }

    @Override
    public OptionalLong cheapest(List<Choice> kept) {
        long[] least = {Long.MAX_VALUE};
        visit(kept, values -> {
            least[0] = Math.min(least[0], cost(values));
            return true;
        });
        return least[0] == Long.MAX_VALUE ? OptionalLong.empty() : OptionalLong.of(least[0]);
    }

    @Override
    public BigInteger count(List<Choice> kept) {
        long[] count = {0};
        visit(kept, values -> {
            count[0]++;
            return true;
        });
        return BigInteger.valueOf(count[0]);
    }

    /** Each valid order that keeps the choices, with its cost. */
    void each(List<Choice> kept, java.util.function.BiConsumer<List<String>, Long> visitor) {
        visit(kept, values -> {
            List<String> names = new ArrayList<>();
            for (int place = 0; place < values.length; place++) {
                names.add(options.get(place).valueNames().get(values[place]));
            }
            visitor.accept(names, cost(values));
            return true;
        });
    }

    private long cost(int[] values) {
        long sum = 0;
        for (Cost cost : costs) {
            sum += cost.when().test(values) ? cost.cents() : 0;
        }
        return sum;
    }

    /** @return false where the visitor stopped it */
    private boolean visit(List<Choice> kept, Predicate<int[]> visitor) {
        int[] fixed = new int[options.size()];
        java.util.Arrays.fill(fixed, -1);
        kept.forEach(choice -> {
            int place = places.get(choice.option());
            fixed[place] = options.get(place).valueNames().indexOf(choice.value());
        });
        return visit(0, new int[options.size()], fixed, visitor);
    }

    private boolean visit(int place, int[] values, int[] fixed, Predicate<int[]> visitor) {
        if (place == values.length) {
            return visitor.test(values);
        }
        if (++looks % LOOK_EACH == 0) {
            deadline.check();
        }
        int from = Math.max(0, fixed[place]);
        int to = fixed[place] < 0 ? options.get(place).values().size() : fixed[place] + 1;
        for (int value = from; value < to; value++) {
            values[place] = value;
            if (forbidden.get(place).stream().noneMatch(limit -> limit.test(values))
                    && !visit(place + 1, values, fixed, visitor)) {
                return false;
            }
        }
        return true;
    }
}
