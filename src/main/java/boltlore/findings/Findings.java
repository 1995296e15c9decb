package boltlore.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collector;
import java.util.stream.Stream;

/** All that was found, the worst first and else in the order found; nothing is ever taken out of it. */
public record Findings(List<Finding> all) {

    public static final Findings NONE = new Findings(List.of());

    public Findings {
        all = all.stream().distinct().sorted(Finding.worstFirst()).toList();
    }

    public static Findings of(Finding... some) {
        return new Findings(List.of(some));
    }

    public static Collector<Finding, ?, Findings> collected() {
        return Collector.of(
                ArrayList<Finding>::new,
                List::add,
                (some, others) -> {
                    some.addAll(others);
                    return some;
                },
                Findings::new);
    }

    public Findings and(Findings others) {
        return all.isEmpty()
                ? others
                : others.all.isEmpty()
                        ? this
                        : new Findings(
                                Stream.concat(all.stream(), others.all.stream()).toList());
    }

    public boolean stops() {
        return all.stream().anyMatch(Finding::stops);
    }

    public boolean isEmpty() {
        return all.isEmpty();
    }

    /** Each put into words of its own: a waived one in the place of what it waives. */
    public Findings each(Function<Finding, Finding> as) {
        return new Findings(all.stream().map(as).toList());
    }
}
