package boltlore.oracle;

import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choices;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All complete choices of a family that break no limit, numbered like a mileage counter: the last option turns fastest. */
final class Variants {

    private final Family family;

    Variants(Family family) {
        this.family = family;
    }

    long combinations() {
        long product = 1;
        for (Option option : family.options()) {
            product = Math.multiplyExact(product, option.values().size());
        }
        return product;
    }

    List<Choices> all() {
        return everyNth(1);
    }

    /** Every so-manieth of all combinations, without those that break a limit. */
    List<Choices> everyNth(long step) {
        List<Choices> valid = new ArrayList<>();
        long combinations = combinations();
        for (long number = 0; number < combinations; number += step) {
            Map<OptionName, String> values = values(number);
            if (new PlainChoice(family, values).valid()) {
                valid.add(Choices.of(family, values));
            }
        }
        return valid;
    }

    /** At most that many valid choices, evenly spread over all combinations. */
    List<Choices> spread(int most) {
        List<Choices> valid = everyNth(Math.max(1, combinations() / 2_000_000));
        List<Choices> spread = new ArrayList<>();
        int take = Math.min(most, valid.size());
        for (int number = 0; number < take; number++) {
            spread.add(valid.get((int) ((long) number * valid.size() / take)));
        }
        return spread;
    }

    private Map<OptionName, String> values(long number) {
        Map<OptionName, String> values = new LinkedHashMap<>();
        long rest = number;
        for (int at = family.options().size() - 1; at >= 0; at--) {
            Option option = family.options().get(at);
            List<OptionValue> all = option.values();
            values.put(option.name(), all.get((int) (rest % all.size())).value());
            rest /= all.size();
        }
        return values;
    }
}
