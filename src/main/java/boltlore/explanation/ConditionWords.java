package boltlore.explanation;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Position;
import boltlore.measure.PositionName;
import boltlore.measure.Wording;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says a condition of a family in plain words, in one language. */
public final class ConditionWords {

    private final Family family;

    public ConditionWords(Family family) {
        this.family = family;
    }

    /** 'every kit', 'Left-hand drive and Type 2 with CCS2', 'not (…)', 'Compressor fitted'. */
    public String of(Condition condition) {
        return condition.isAlways() ? "every kit" : say(condition, false);
    }

    private String say(Condition condition, boolean inner) {
        if (condition instanceof Condition.Is is) {
            return values(is);
        }
        if (condition instanceof Condition.Filled filled) {
            return positionSays(filled.position()) + " fitted";
        }
        if (condition instanceof Condition.Not not) {
            return not.condition() instanceof Condition.Filled filled
                    ? "no " + positionSays(filled.position()) + " fitted"
                    : "not (" + say(not.condition(), false) + ")";
        }
        if (condition instanceof Condition.All all) {
            return join(all.conditions(), " and ", inner);
        }
        return join(((Condition.AnyOf) condition).conditions(), " or ", inner);
    }

    private String join(List<Condition> conditions, String word, boolean inner) {
        String joined = conditions.stream().map(each -> say(each, true)).collect(Collectors.joining(word));
        return inner && conditions.size() > 1 ? "(" + joined + ")" : joined;
    }

    /** A value that the family does not have (yet) is said by its name. */
    private String values(Condition.Is is) {
        List<OptionValue> known = family.option(is.option()).map(Option::values).orElse(List.of());
        SortedSet<String> unknown = new TreeSet<>(is.values());
        known.forEach(value -> unknown.remove(value.value()));
        List<String> says = Stream.concat(
                        known.stream()
                                .filter(value -> is.values().contains(value.value()))
                                .map(OptionValue::says)
                                .map(Wording::english),
                        unknown.stream().map(value -> is.option().text() + " " + value))
                .toList();
        return says.size() == 1 ? says.get(0) : "(" + String.join(" or ", says) + ")";
    }

    private String positionSays(PositionName position) {
        return family.position(position)
                .map(Position::says)
                .map(Wording::english)
                .orElse(position.text());
    }
}
