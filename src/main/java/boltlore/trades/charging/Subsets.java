package boltlore.trades.charging;

import boltlore.catalogue.Condition;
import boltlore.logic.All;
import boltlore.logic.Any;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Which of some things an order has at once.
 *
 * @param when it has these, and none of the others
 */
record Subsets<T>(List<T> in, Condition when) {

    /**
     * Each choice that no option alone rules out; whether some order has it, is for a solver.
     *
     * @param when an order has it, as a condition over options
     */
    static <T> List<Subsets<T>> of(List<T> things, Function<T, Condition> when) {
        List<Subsets<T>> found = new ArrayList<>();
        grow(things, when, 0, new ArrayList<>(), new TreeMap<>(), new ArrayList<>(), found);
        return List.copyOf(found);
    }

    private static <T> void grow(
            List<T> things,
            Function<T, Condition> when,
            int at,
            List<T> in,
            Map<String, SortedSet<String>> values,
            List<Condition> so,
            List<Subsets<T>> found) {
        if (at == things.size()) {
            found.add(new Subsets<>(List.copyOf(in), All.of(so)));
            return;
        }
        T next = things.get(at);
        Condition holds = when.apply(next);
        if (!holds.isAlways()) {
            so.add(Any.but(holds));
            grow(things, when, at + 1, in, values, so, found);
            so.remove(so.size() - 1);
        }
        Map<String, SortedSet<String>> narrowed = new TreeMap<>(values);
        if (!holds.equals(Any.NEVER) && narrow(holds, narrowed)) {
            so.add(holds);
            in.add(next);
            grow(things, when, at + 1, in, narrowed, so, found);
            in.remove(in.size() - 1);
            so.remove(so.size() - 1);
        }
    }

    /** False where an option would need two values at once. */
    private static boolean narrow(Condition condition, Map<String, SortedSet<String>> values) {
        if (condition instanceof Condition.All all) {
            return all.conditions().stream().allMatch(each -> narrow(each, values));
        }
        if (condition instanceof Condition.Is is) {
            SortedSet<String> left = new TreeSet<>(is.values());
            SortedSet<String> known = values.get(is.option().text());
            if (known != null) {
                left.retainAll(known);
            }
            values.put(is.option().text(), left);
            return !left.isEmpty();
        }
        return true;
    }
}
