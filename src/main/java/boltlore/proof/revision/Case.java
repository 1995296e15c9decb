package boltlore.proof.revision;

import boltlore.catalogue.Condition;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Orders with one of these values in each of these options; without any, all orders. */
public record Case(SortedMap<OptionName, SortedSet<String>> values) {

    Case without(OptionName option) {
        SortedMap<OptionName, SortedSet<String>> fewer = new TreeMap<>(values);
        fewer.remove(option);
        return new Case(fewer);
    }

    Case with(OptionName option, String value) {
        SortedMap<OptionName, SortedSet<String>> wider = new TreeMap<>(values);
        wider.computeIfPresent(option, (name, before) -> {
            SortedSet<String> all = new TreeSet<>(before);
            all.add(value);
            return all;
        });
        return new Case(wider);
    }

    public Condition condition() {
        List<Condition> all = new ArrayList<>();
        values.forEach((option, some) -> all.add(new Condition.Is(option, some)));
        return all.size() == 1 ? all.get(0) : new Condition.All(all);
    }

    @Override
    public String toString() {
        return values.isEmpty()
                ? "any choices"
                : values.entrySet().stream().map(Case::shown).collect(Collectors.joining(", "));
    }

    private static String shown(Map.Entry<OptionName, SortedSet<String>> entry) {
        return entry.getKey() + "=" + String.join(" or ", entry.getValue());
    }
}
