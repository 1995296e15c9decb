package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.FinishRule;
import boltlore.catalogue.Option;
import boltlore.catalogue.Pair;
import boltlore.measure.OptionName;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Whatever a customer may choose changes something: a line, a limit, a cable, a road load. One value of a question may stand in
 * no condition, for it is what is left where none of the others is chosen; of a question with several answers none may.
 */
final class ValuesUsed {

    private final Family family;
    private final Map<OptionName, Set<String>> mentioned = new HashMap<>();
    private final Set<OptionName> asWhole = new HashSet<>();

    private ValuesUsed(Catalogue catalogue, Family family) {
        this.family = family;
        walk(family);
        catalogue.parts().values().forEach(part -> walk(part.needs()));
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream().flatMap(family -> new ValuesUsed(catalogue, family).remarks());
    }

    /** Conditions stand at every depth of a family's records. */
    private void walk(Object any) {
        if (any instanceof Condition.Is is) {
            mentioned.computeIfAbsent(is.option(), option -> new HashSet<>()).addAll(is.values());
        } else if (any instanceof Collection<?> several) {
            several.forEach(this::walk);
        } else if (any instanceof Map<?, ?> map) {
            map.values().forEach(this::walk);
        } else if (any instanceof Record record) {
            decided(record);
            walkInto(record);
        }
    }

    private void decided(Record record) {
        if (record instanceof FinishRule.DecidedBy rule) {
            asWhole.add(rule.option());
        } else if (record instanceof Pair.One pair) {
            asWhole.add(pair.follows());
        }
    }

    private void walkInto(Record record) {
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            Object value = RecordValues.of(record, component);
            if (value != null) {
                walk(value);
            }
        }
    }

    /** What a role makes of its values, and pieces of time, are no matter of conditions. */
    private Stream<Remark> remarks() {
        return family.options().stream()
                .filter(option -> option.role() == null && option.scale() == null)
                .filter(option -> !asWhole.contains(option.name()))
                .flatMap(this::of);
    }

    private Stream<Remark> of(Option option) {
        Set<String> used = mentioned.getOrDefault(option.name(), Set.of());
        List<String> unused = option.valueNames().stream()
                .filter(value -> !used.contains(value))
                .toList();
        Option.Group group = option.group();
        if (group != null) {
            return used.isEmpty()
                    ? Stream.of(remark(group.name() + "=" + group.value(), "which changes nothing"))
                    : Stream.of();
        }
        return used.isEmpty() || unused.size() > 1
                ? unused.stream().map(value -> remark(option.name() + "=" + value, "which changes nothing"))
                : Stream.of();
    }

    private Remark remark(String value, String found) {
        return new Remark(
                "value " + family.name() + "/" + value,
                Check.VALUE_UNUSED,
                "a value that no line, limit or other condition names, " + found,
                "something that is other for orders with it",
                "Add the line that it stands for, or take the value out");
    }
}
