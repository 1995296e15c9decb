package boltlore.choosing;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Facts;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.measure.OptionName;
import boltlore.measure.Wording;
import boltlore.oracle.Completions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;

/** Random families small enough to look at every order, with random choices in them. */
final class SmallFamilies {

    private final Random random;

    SmallFamilies(long seed) {
        this.random = new Random(seed);
    }

    /** One to five options of one to four values, up to seven limits. */
    Family family() {
        List<Option> options = new ArrayList<>();
        int many = 1 + random.nextInt(5);
        for (int i = 0; i < many; i++) {
            options.add(option("o" + i, 1 + random.nextInt(4)));
        }
        return family(options, limits(options));
    }

    static Family family(List<Option> options, List<Limit> limits) {
        return new Family(
                "small", Wording.english("Small"), null, options, limits, Map.of(), List.of(), List.of(), List.of());
    }

    static Option option(String name, int values) {
        List<OptionValue> all = new ArrayList<>();
        for (int i = 0; i < values; i++) {
            all.add(new OptionValue("v" + i, Wording.english(name + " v" + i), Facts.NONE));
        }
        return new Option(new OptionName(name), "Which " + name + "?", null, all, null, List.of());
    }

    private List<Limit> limits(List<Option> options) {
        List<Limit> limits = new ArrayList<>();
        int many = random.nextInt(8);
        for (int i = 0; i < many; i++) {
            Condition then = random.nextBoolean() ? condition(options, 1) : null;
            limits.add(new Limit("l" + i, "Because of " + i + ".", null, condition(options, 2), then));
        }
        return limits;
    }

    Condition condition(List<Option> options, int depth) {
        int kind = random.nextInt(depth == 0 ? 1 : 5);
        if (kind == 1) {
            return new Condition.Not(condition(options, depth - 1));
        }
        if (kind == 2) {
            return new Condition.All(List.of(condition(options, depth - 1), condition(options, depth - 1)));
        }
        if (kind == 3) {
            return new Condition.AnyOf(List.of(condition(options, depth - 1), condition(options, depth - 1)));
        }
        Option option = options.get(random.nextInt(options.size()));
        TreeSet<String> values = new TreeSet<>();
        option.valueNames().stream().filter(value -> random.nextBoolean()).forEach(values::add);
        if (values.isEmpty()) {
            values.add(option.valueNames().get(0));
        }
        return new Condition.Is(option.name(), values);
    }

    /** Any values for some of the options. */
    Choices choices(Family family) {
        Choices choices = Choices.of(family, Map.of());
        for (Option option : family.options()) {
            if (random.nextInt(3) > 0) {
                choices = choices.with(option.name(), value(option));
            }
        }
        return choices;
    }

    Choice choice(Family family) {
        Option option = family.options().get(random.nextInt(family.options().size()));
        return new Choice(option.name(), value(option));
    }

    private String value(Option option) {
        return option.valueNames().get(random.nextInt(option.values().size()));
    }

    /** Options in a random order, and some of them firm. */
    Importance importance(Family family) {
        List<OptionName> rank = new ArrayList<>();
        TreeSet<OptionName> firm = new TreeSet<>();
        for (Option option : family.options()) {
            if (random.nextInt(4) == 0) {
                firm.add(option.name());
            } else {
                rank.add(random.nextInt(rank.size() + 1), option.name());
            }
        }
        return new Importance(firm, rank);
    }

    static List<Choices> completions(Choices partial) {
        List<Choices> all = new ArrayList<>();
        Completions.visit(partial, all::add);
        return all;
    }
}
