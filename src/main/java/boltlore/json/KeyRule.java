package boltlore.json;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What keys of one object demand of one another. */
public sealed interface KeyRule {

    boolean isBroken(Map<String, Json> members);

    /** The keys of exactly one of these ways, each way's keys divided by blanks. */
    record OneWay(List<String> ways) implements KeyRule {

        public OneWay(String... ways) {
            this(List.of(ways));
        }

        @Override
        public boolean isBroken(Map<String, Json> members) {
            Set<String> there = keys(String.join(" ", ways));
            there.retainAll(members.keySet());
            return ways.stream().noneMatch(way -> keys(way).equals(there));
        }

        public static Set<String> keys(String way) {
            return new TreeSet<>(Arrays.asList(way.split(" ")));
        }

        /** 'either 'each', or 'joint' and 'atLeast''; 'one of: 'oven'; 'coater' and 'pricePerM2''. */
        public String says() {
            boolean two = ways.size() == 2;
            boolean single = ways.stream().allMatch(way -> way.indexOf(' ') < 0);
            String between = !two ? "; " : single ? " or " : ", or ";
            return ways.stream()
                    .map(way -> "'" + way.replace(" ", "' and '") + "'")
                    .collect(Collectors.joining(between, two ? "either " : "one of: ", ""));
        }
    }

    /** Where that key is, those are too. */
    record Needs(String key, Set<String> others) implements KeyRule {

        public Needs(String key, String... others) {
            this(key, new TreeSet<>(Set.of(others)));
        }

        @Override
        public boolean isBroken(Map<String, Json> members) {
            return members.containsKey(key) && !members.keySet().containsAll(others);
        }
    }

    /** Where that key has that value, that other is there too. */
    record With(String key, String value, String other) implements KeyRule {
        @Override
        public boolean isBroken(Map<String, Json> members) {
            return members.get(key) instanceof Json.Text text
                    && text.text().equals(value)
                    && !members.containsKey(other);
        }
    }

    /** Where that key has that value, these keys may not be. */
    record Without(String key, String value, Set<String> others) implements KeyRule {

        public Without(String key, String value, String... others) {
            this(key, value, new TreeSet<>(Set.of(others)));
        }

        @Override
        public boolean isBroken(Map<String, Json> members) {
            return members.get(key) instanceof Json.Text text
                    && text.text().equals(value)
                    && others.stream().anyMatch(members::containsKey);
        }
    }

    /** That key has none of those values. */
    record Other(String key, Set<String> values) implements KeyRule {
        @Override
        public boolean isBroken(Map<String, Json> members) {
            return members.get(key) instanceof Json.Text text && values.contains(text.text());
        }
    }

    /** Not both. */
    record Apart(String one, String other) implements KeyRule {
        @Override
        public boolean isBroken(Map<String, Json> members) {
            return members.containsKey(one) && members.containsKey(other);
        }
    }
}
