package boltlore.oracle;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Effectivity;
import boltlore.catalogue.Facts;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Line;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Position;
import boltlore.catalogue.Role;
import boltlore.measure.OptionName;
import boltlore.measure.PositionName;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** A complete choice, and what is true under it: conditions, called lines, filled positions. */
final class PlainChoice {

    private static final Pattern DAY = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

    private final Family family;
    private final Map<OptionName, String> values;
    private final Map<PositionName, Boolean> filled = new HashMap<>();

    PlainChoice(Family family, Map<OptionName, String> values) {
        this.family = family;
        this.values = values;
    }

    /** Whether no limit is broken. */
    boolean valid() {
        for (Limit limit : family.limits()) {
            if (holds(limit.when()) && (limit.then() == null || !holds(limit.then()))) {
                return false;
            }
        }
        return true;
    }

    boolean holds(Condition condition) {
        if (condition instanceof Condition.Is is) {
            return is.values().contains(values.get(is.option()));
        }
        if (condition instanceof Condition.Not not) {
            return !holds(not.condition());
        }
        if (condition instanceof Condition.Filled asked) {
            return filled(asked.position());
        }
        if (condition instanceof Condition.All all) {
            for (Condition each : all.conditions()) {
                if (!holds(each)) {
                    return false;
                }
            }
            return true;
        }
        for (Condition each : ((Condition.AnyOf) condition).conditions()) {
            if (holds(each)) {
                return true;
            }
        }
        return false;
    }

    boolean called(Line line) {
        List<Condition> conjuncts = line.when() instanceof Condition.All all ? all.conditions() : List.of(line.when());
        int dated = line.effectivity().isAlways() ? 0 : ends(line.effectivity());
        return effective(line.effectivity()) && holds(new Condition.All(conjuncts.subList(dated, conjuncts.size())));
    }

    /** Of how many scales it has an end; so many conjuncts stand before what was written. */
    private static int ends(Effectivity ends) {
        boolean days = ends.from() != null || ends.until() != null;
        boolean numbers = ends.fromChassis() != null || ends.untilChassis() != null;
        return (days ? 1 : 0) + (numbers ? 1 : 0);
    }

    /** By the calendar and by counting, not by pieces: some order of the piece. */
    private boolean effective(Effectivity ends) {
        boolean onDay = true;
        String placed = values.get(new OptionName("placed"));
        if (placed != null) {
            LocalDate one = LocalDate.parse(
                    DAY.matcher(placed).results().findFirst().orElseThrow().group());
            onDay = ends.holdsOn(placed.startsWith("until-") ? one.minusYears(1) : one);
        }
        String chassis = values.get(new OptionName("chassis"));
        boolean forNumber = chassis == null
                || ends.holdsFor(
                        chassis.startsWith("until-")
                                ? 1
                                : Integer.parseInt(chassis.replace("from-", "").replaceAll("-to-.*", "")));
        return onDay && forNumber;
    }

    /** Some line of it is called for, whether or not the order leaves it out. */
    boolean filled(PositionName name) {
        Boolean known = filled.get(name);
        if (known == null) {
            known = family.positions().stream()
                    .filter(position -> position.name().equals(name))
                    .flatMap(position -> position.lines().stream())
                    .anyMatch(this::called);
            filled.put(name, known);
        }
        return known;
    }

    boolean filled(Position position) {
        return filled(position.name());
    }

    String value(OptionName option) {
        return values.getOrDefault(option, "");
    }

    Optional<OptionValue> inRole(Role role) {
        for (Option option : family.options()) {
            if (option.role() == role) {
                return option.values().stream()
                        .filter(value -> value.value().equals(values.get(option.name())))
                        .findFirst();
            }
        }
        return Optional.empty();
    }

    Facts facts(Role role) {
        return inRole(role).map(OptionValue::facts).orElse(Facts.NONE);
    }
}
