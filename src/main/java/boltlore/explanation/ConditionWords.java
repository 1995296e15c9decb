package boltlore.explanation;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Position;
import boltlore.measure.PositionName;
import boltlore.measure.Wording;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says a condition of a family in plain words, in one language. */
public final class ConditionWords {

    private static final Wording EVERY = wording("every kit", "jeder Bausatz", "tout kit");
    private static final Wording AND = wording(" and ", " und ", " et ");
    private static final Wording OR = wording(" or ", " oder ", " ou ");
    private static final Wording NOT = wording("not ", "nicht ", "pas ");
    private static final Wording FITTED = wording("{0} fitted", "{0} eingebaut", "{0} monté");
    private static final Wording NONE_FITTED = wording("no {0} fitted", "ohne {0}", "sans {0}");

    private final Family family;
    private final String language;

    /** In English. */
    public ConditionWords(Family family) {
        this(family, Wording.ENGLISH);
    }

    /** @param language of the names and of what joins them */
    public ConditionWords(Family family, String language) {
        this.family = family;
        this.language = language;
    }

    private static Wording wording(String english, String german, String french) {
        return new Wording(Map.of(Wording.ENGLISH, english, "de", german, "fr", french));
    }

    /** 'every kit', 'Left-hand drive and Type 2 with CCS2', 'not (…)', 'Compressor fitted'. */
    public String of(Condition condition) {
        return condition.isAlways() ? EVERY.in(language) : say(condition, false);
    }

    private String say(Condition condition, boolean inner) {
        if (condition instanceof Condition.Is is) {
            return values(is);
        }
        if (condition instanceof Condition.Filled filled) {
            return around(FITTED, filled.position());
        }
        if (condition instanceof Condition.Not not) {
            return not.condition() instanceof Condition.Filled filled
                    ? around(NONE_FITTED, filled.position())
                    : NOT.in(language) + "(" + say(not.condition(), false) + ")";
        }
        if (condition instanceof Condition.All all) {
            return join(all.conditions(), AND.in(language), inner);
        }
        return join(((Condition.AnyOf) condition).conditions(), OR.in(language), inner);
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
                                .map(name -> name.in(language)),
                        unknown.stream().map(value -> is.option().text() + " " + value))
                .toList();
        return says.size() == 1 ? says.get(0) : "(" + String.join(OR.in(language), says) + ")";
    }

    private String around(Wording words, PositionName position) {
        String says = family.position(position)
                .map(Position::says)
                .map(name -> name.in(language))
                .orElse(position.text());
        return words.in(language).replace("{0}", says);
    }
}
