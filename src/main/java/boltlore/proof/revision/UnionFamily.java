package boltlore.proof.revision;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.logic.Any;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The options of two revisions together: each option and value that one of them knows. An option that only one knows is
 * free in the other; a value that only one knows is never valid in the other.
 *
 * @param family has all options and no limit
 * @param before what the earlier revision allows, as limits
 * @param after what the later one allows
 * @param onlyBefore options that only the earlier one has
 * @param onlyAfter options that only the later one has
 */
record UnionFamily(
        Family family, List<Limit> before, List<Limit> after, List<OptionName> onlyBefore, List<OptionName> onlyAfter) {

    static UnionFamily of(Family before, Family after) {
        Map<OptionName, Option> options = new LinkedHashMap<>();
        after.options().forEach(option -> options.put(option.name(), option));
        before.options().forEach(option -> options.merge(option.name(), option, UnionFamily::joined));
        Family union = after.choosing(List.copyOf(options.values()), List.of());
        return new UnionFamily(
                union, valid(before, options), valid(after, options), missing(after, before), missing(before, after));
    }

    private static Option joined(Option later, Option earlier) {
        Map<String, OptionValue> values = new LinkedHashMap<>();
        later.values().forEach(value -> values.put(value.value(), value));
        earlier.values().forEach(value -> values.putIfAbsent(value.value(), value));
        return later.offering(List.copyOf(values.values()), later.usual());
    }

    /** The limits of the revision, and one for each option with values that it does not know. */
    private static List<Limit> valid(Family revision, Map<OptionName, Option> all) {
        List<Limit> limits = new ArrayList<>(revision.limits());
        for (Option option : revision.options()) {
            SortedSet<String> unknown = new TreeSet<>(Optional.ofNullable(all.get(option.name()))
                    .map(Option::valueNames)
                    .orElse(List.of()));
            unknown.removeAll(option.valueNames());
            if (!unknown.isEmpty()) {
                Condition other = new Condition.Is(option.name(), unknown);
                limits.add(
                        new Limit("values of " + option.name(), "This revision has no such value.", null, other, null));
            }
        }
        return limits;
    }

    private static List<OptionName> missing(Family from, Family in) {
        return in.options().stream()
                .map(Option::name)
                .filter(option -> from.option(option).isEmpty())
                .toList();
    }

    List<Limit> both() {
        return Stream.concat(before.stream(), after.stream()).toList();
    }

    /** When some of these limits is not kept. */
    static Condition broken(List<Limit> limits) {
        return Any.of(limits.stream().map(Limit::forbids).toList());
    }
}
