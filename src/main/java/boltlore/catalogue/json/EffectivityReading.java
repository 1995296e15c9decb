package boltlore.catalogue.json;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Effectivity;
import boltlore.catalogue.EffectivityScale;
import boltlore.catalogue.Option;
import boltlore.json.Faults;
import boltlore.json.Json;
import boltlore.json.KeyRule;
import boltlore.json.ObjectReader;
import boltlore.json.Values;
import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Reads from when until when something holds. A condition can only name pieces of a scale, so the scales of a family are cut
 * before any of its conditions is read.
 */
final class EffectivityReading {

    private static final KeyRule ONE_BEGINNING = new KeyRule.Apart("placedFrom", "fromChassis");
    static final int LAST_CHASSIS = 999_999_999;

    private static final String FROM = "from";
    private static final String UNTIL = "until";
    private static final String FROM_CHASSIS = "fromChassis";
    private static final String UNTIL_CHASSIS = "untilChassis";

    private final Map<EffectivityScale.By, TreeSet<Integer>> begins = new EnumMap<>(EffectivityScale.By.class);

    private EffectivityReading() {}

    /** The scales that the effectivities in these files of one family cut, and those others; none where there is none. */
    static List<EffectivityScale> scales(Collection<Json> files, List<EffectivityScale> others) {
        EffectivityReading cutting = new EffectivityReading();
        others.forEach(other -> cutting.begins.put(other.by(), new TreeSet<>(other.begins())));
        files.forEach(cutting::walk);
        return cutting.begins.entrySet().stream()
                .map(each -> new EffectivityScale(each.getKey(), each.getValue()))
                .toList();
    }

    private void walk(Json json) {
        if (json instanceof Json.Arr list) {
            list.items().forEach(this::walk);
        } else if (json instanceof Json.Obj object) {
            if (object.members().containsKey("line")) {
                cut(EffectivityScale.By.PLACED, object.members(), FROM, UNTIL);
                cut(EffectivityScale.By.CHASSIS, object.members(), FROM_CHASSIS, UNTIL_CHASSIS);
            }
            object.members().forEach((key, value) -> {
                if (value instanceof Json.Obj ends) {
                    EffectivityScale.By.named(key).ifPresent(by -> cut(by, ends.members(), FROM, UNTIL));
                }
                walk(value);
            });
        }
    }

    /** What is no date or number leaves its fault where it is read. */
    private void cut(EffectivityScale.By by, Map<String, Json> members, String from, String until) {
        Integer first = at(by, members.get(from), new Faults());
        Integer last = at(by, members.get(until), new Faults());
        TreeSet<Integer> cuts = begins.getOrDefault(by, new TreeSet<>());
        Stream.ofNullable(first).forEach(cuts::add);
        Stream.ofNullable(last).map(end -> end + 1).forEach(cuts::add);
        if (!cuts.isEmpty()) {
            begins.put(by, cuts);
        }
    }

    private static @Nullable Integer at(EffectivityScale.By by, @Nullable Json json, Faults faults) {
        if (json == null) {
            return null;
        }
        return by == EffectivityScale.By.CHASSIS
                ? Values.whole(json, 0, LAST_CHASSIS, faults).orElse(null)
                : Values.date(json, faults)
                        .map(day -> Math.toIntExact(day.toEpochDay()))
                        .orElse(null);
    }

    /** The options of a family with those of its scales. */
    static List<Option> with(Reading reading, List<Option> options) {
        return Stream.concat(options.stream(), reading.scales().stream().map(EffectivityScale::option))
                .toList();
    }

    static Effectivity ofLine(ObjectReader reader) {
        Effectivity effectivity = new Effectivity(
                reader.findDate(FROM),
                reader.findDate(UNTIL),
                reader.findWhole(FROM_CHASSIS, 0, LAST_CHASSIS),
                reader.findWhole(UNTIL_CHASSIS, 0, LAST_CHASSIS));
        backwards(effectivity.from(), effectivity.until(), UNTIL, reader);
        backwards(effectivity.fromChassis(), effectivity.untilChassis(), UNTIL_CHASSIS, reader);
        return effectivity;
    }

    static Effectivity ofSuccessor(ObjectReader reader) {
        if (reader.breaks(ONE_BEGINNING)) {
            reader.faultAt(FROM_CHASSIS, "'placedFrom' and 'fromChassis'", "one of the two", "Remove one.");
        }
        return new Effectivity(
                reader.findDate("placedFrom"), null, reader.findWhole(FROM_CHASSIS, 0, LAST_CHASSIS), null);
    }

    private static <T extends Comparable<? super T>> void backwards(
            @Nullable T first, @Nullable T last, String key, ObjectReader reader) {
        if (first != null && last != null && last.compareTo(first) < 0) {
            reader.faultAt(key, "from " + first + " until " + last, "an end that is not before the beginning", "");
        }
    }

    /** {"placed": {"from": "2026-03-01", "until": "2026-08-31"}} or {"chassis": {"from": 1200}}: one end may be missing. */
    static Condition condition(String key, Json json, Reading reading) {
        EffectivityScale.By by = EffectivityScale.By.named(key).orElseThrow();
        ObjectReader reader = ObjectReader.of(json, reading.faults());
        boolean chassis = by == EffectivityScale.By.CHASSIS;
        Condition condition = chassis
                ? within(
                        by,
                        reader.findWhole(FROM, 0, LAST_CHASSIS),
                        reader.findWhole(UNTIL, 0, LAST_CHASSIS),
                        reader,
                        reading)
                : within(by, days(reader.findDate(FROM)), days(reader.findDate(UNTIL)), reader, reading);
        reader.done();
        return condition;
    }

    private static Condition within(
            EffectivityScale.By by,
            @Nullable Integer first,
            @Nullable Integer last,
            ObjectReader reader,
            Reading reading) {
        if (reader.sound() && first == null && last == null) {
            reader.fault(
                    "neither 'from' nor 'until'",
                    "one of them, or both",
                    "Leave '" + by.written() + "' out where it always holds.");
        }
        if (first != null && last != null && last < first) {
            reader.faultAt(UNTIL, "an end before the beginning", "an end that is not before the beginning", "");
        }
        return reading.scales().stream()
                .filter(scale -> scale.by() == by)
                .findFirst()
                .map(scale -> scale.within(first, last))
                .orElse(Condition.ALWAYS);
    }

    private static @Nullable Integer days(@Nullable LocalDate day) {
        return day == null ? null : Math.toIntExact(day.toEpochDay());
    }
}
