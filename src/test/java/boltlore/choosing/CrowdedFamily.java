package boltlore.choosing;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Families with very many options and limits, made up from a seed: two limits in three tie options that stand near each
 * other, as in one sub-system, and one in three reaches across the family. One order that was drawn first keeps all.
 */
public final class CrowdedFamily {

    private static final int NEAR = 20;

    private final Random random;
    private final List<Option> options = new ArrayList<>();
    private final List<Integer> kept = new ArrayList<>();
    private final List<Limit> limits = new ArrayList<>();

    private CrowdedFamily(long seed) {
        random = new Random(seed);
    }

    /** Options of two to that many values. */
    public static Family of(int optionCount, int mostValues, int limitCount, long seed) {
        CrowdedFamily made = new CrowdedFamily(seed);
        for (int i = 0; i < optionCount; i++) {
            int values = mostValues == 2 ? 2 : 2 + made.random.nextInt(mostValues - 1);
            made.options.add(SmallFamilies.option("o" + i, values));
            made.kept.add(made.random.nextInt(values));
        }
        while (made.limits.size() < limitCount) {
            made.limit();
        }
        return SmallFamilies.family(made.options, made.limits);
    }

    private void limit() {
        int first = random.nextInt(options.size());
        int second = other(first);
        int third = other(first);
        if (first == second || first == third || second == third) {
            return;
        }
        switch (random.nextInt(4)) {
            case 0 -> add(List.of(some(first, 1), some(second, 1)), null);
            case 1 -> add(List.of(some(first, 1)), part(second));
            case 2 -> add(List.of(some(first, 1), some(second, 1)), part(third));
            default -> add(List.of(some(first, 1), part(second), some(third, 1)), null);
        }
    }

    private int other(int first) {
        int step = random.nextInt(3) == 0 ? options.size() : NEAR;
        return Math.floorMod(first + 1 + random.nextInt(step), options.size());
    }

    /** A limit, unless the order that keeps all breaks it. */
    private void add(List<Condition.Is> when, Condition.@Nullable Is then) {
        boolean applies = when.stream().allMatch(this::holds);
        if (!applies || (then != null && holds(then))) {
            Condition all = when.size() == 1 ? when.get(0) : new Condition.All(List.copyOf(when));
            String name = "l" + limits.size();
            limits.add(new Limit(name, "Because of " + name + ".", null, all, then));
        }
    }

    private boolean holds(Condition.Is is) {
        int place = Integer.parseInt(is.option().text().substring(1));
        return is.values().contains("v" + kept.get(place));
    }

    /** About half of an option's values. */
    private Condition.Is part(int option) {
        return some(option, Math.max(1, options.get(option).values().size() / 2));
    }

    private Condition.Is some(int option, int many) {
        List<String> names = options.get(option).valueNames();
        TreeSet<String> values = new TreeSet<>();
        while (values.size() < many) {
            values.add(names.get(random.nextInt(names.size())));
        }
        return new Condition.Is(options.get(option).name(), values);
    }
}
