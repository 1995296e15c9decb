package boltlore.scale;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.catalogue.Part;
import boltlore.choices.Choice;
import boltlore.logic.KitConditions;
import boltlore.logic.Term;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What several ways of working are asked of one family, the same of all: questions about a partial choice, over options,
 * limits, and the cost of the parts on the lines of a kit.
 *
 * @param cents what each condition over options alone adds to a kit's cost, in hundredths of the workshop's currency; never
 *     negative, each condition once
 */
record Asked(Family family, Map<Condition, Long> cents) {

    private static final int EACH_SETTLED = 3;

    /** One way to answer. Each answer may be given up by {@code Deadline.Passed}. */
    interface Way {

        /** The values that stand in some valid order that keeps the choices, those of settled options included. */
        Set<Choice> open(List<Choice> kept);

        /** Whether some valid order keeps them. */
        boolean possible(List<Choice> kept);

        /** Cost of the cheapest valid order that keeps them; empty where there is none. */
        OptionalLong cheapest(List<Choice> kept);

        /** How many valid orders keep them. */
        BigInteger count(List<Choice> kept);
    }

    static Asked of(Catalogue catalogue, Family family) {
        KitConditions kit = new KitConditions(catalogue, family, false);
        Map<Condition, Long> cents = new LinkedHashMap<>();
        family.lines().forEach(line -> {
            Part part = catalogue.part(line.part());
            long cost = line.quantity()
                    .multiply(part.cost())
                    .movePointRight(2)
                    .setScale(0, RoundingMode.HALF_UP)
                    .longValueExact();
            if (cost > 0) {
                cents.merge(kit.in(line.name()), cost, Long::sum);
            }
        });
        return new Asked(family, Collections.unmodifiableMap(cents));
    }

    List<Condition> forbidden() {
        return family.limits().stream().map(Limit::forbids).toList();
    }

    List<Term> terms() {
        return cents.entrySet().stream()
                .map(each -> new Term(BigDecimal.valueOf(each.getValue()), each.getKey()))
                .toList();
    }

    /**
     * A third of the options with values drawn by chance.
     *
     * @param fits whether choices stand together; what does not is drawn again
     */
    List<Choice> partial(Random random, Predicate<List<Choice>> fits) {
        List<Option> options = new ArrayList<>(family.options());
        Collections.shuffle(options, random);
        List<Choice> partial = new ArrayList<>();
        for (Option option : options.subList(0, options.size() / EACH_SETTLED)) {
            int drawn = partial.size();
            do {
                partial.subList(drawn, partial.size()).clear();
                partial.add(new Choice(
                        option.name(),
                        option.valueNames().get(random.nextInt(option.values().size()))));
            } while (!fits.test(partial));
        }
        return List.copyOf(partial);
    }
}
