package boltlore.proof;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.choices.Choices;
import boltlore.choices.Mentions;
import boltlore.logic.Truth;
import boltlore.measure.OptionName;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * All valid orders of a small family by trying every choice, free options left open: a second way to count, which knows
 * nothing of solvers and diagrams.
 */
public final class PlainVariants {

    /** Variants, free options factored out, up to which a family counts as small. */
    public static final int MOST_VARIANTS = 20_000;

    private static final List<Role> FACTS_DECIDE =
            List.of(Role.MARKET, Role.INLET, Role.DC_INLET, Role.CHARGER, Role.SUPPLY, Role.EXPORT, Role.LANGUAGE);

    private static final int MOST_STEPS = 1_000_000;

    private final Family family;
    private final List<Option> options;
    private final List<List<Condition>> forbidden = new ArrayList<>();
    private final Map<OptionName, String> chosen = new LinkedHashMap<>();
    private final List<Choices> found = new ArrayList<>();
    private int steps;

    private PlainVariants(Family family) {
        this.family = family;
        Set<OptionName> mentioned = Mentions.find(family);
        options = family.options().stream()
                .filter(option -> decides(option, mentioned))
                .toList();
        options.forEach(option -> forbidden.add(new ArrayList<>()));
        forbidden.add(new ArrayList<>());
        for (Limit limit : family.limits()) {
            forbidden.get(lastOption(limit.forbids())).add(limit.forbids());
        }
    }

    /** Whether lines, limits or findings depend on it: by a condition, or by the facts of its values in their role. */
    private static boolean decides(Option option, Set<OptionName> mentioned) {
        return mentioned.contains(option.name()) || (option.role() != null && FACTS_DECIDE.contains(option.role()));
    }

    private int lastOption(Condition condition) {
        Set<OptionName> spokenOf = Mentions.find(condition);
        int last = options.size();
        for (int i = 0; i < options.size(); i++) {
            last = spokenOf.contains(options.get(i).name()) ? i : last;
        }
        return last;
    }

    /** Every valid choice of the options that are not free; empty where the family is not small. */
    public static Optional<List<Choices>> list(Family family) {
        PlainVariants variants = new PlainVariants(family);
        return variants.choose(0) ? Optional.of(variants.found) : Optional.empty();
    }

    /** How many orders each of the variants stands for: the product of the free options' values. */
    public static BigInteger ordersEach(Family family) {
        Set<OptionName> mentioned = Mentions.find(family);
        return family.options().stream()
                .filter(option -> !decides(option, mentioned))
                .map(option -> BigInteger.valueOf(option.values().size()))
                .reduce(BigInteger.ONE, BigInteger::multiply);
    }

    /** @return false when it takes too long */
    private boolean choose(int place) {
        if (place == options.size()) {
            if (isAllowed(place)) {
                found.add(Choices.of(family, chosen));
            }
            return found.size() <= MOST_VARIANTS;
        }
        Option option = options.get(place);
        for (OptionValue value : option.values()) {
            chosen.put(option.name(), value.value());
            if (++steps > MOST_STEPS || (isAllowed(place) && !choose(place + 1))) {
                return false;
            }
        }
        chosen.remove(option.name());
        return true;
    }

    private boolean isAllowed(int place) {
        List<Condition> newlySettled = forbidden.get(place);
        if (newlySettled.isEmpty()) {
            return true;
        }
        Truth truth = new Truth(Choices.of(family, chosen));
        return newlySettled.stream().noneMatch(truth::of);
    }
}
