package boltlore.oracle;

import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choices;
import boltlore.measure.OptionName;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All complete choices of a family that break no limit, numbered like a mileage counter: the last option turns fastest. */
public final class Variants {

    private static final double GOLDEN_CUT = 0.618034;

    private final Family family;

    public Variants(Family family) {
        this.family = family;
    }

    public long combinations() {
        long product = 1;
        for (Option option : family.options()) {
            product = Math.multiplyExact(product, option.values().size());
        }
        return product;
    }

    public List<Choices> all() {
        return walk(1, Integer.MAX_VALUE);
    }

    /** At most that many valid choices, evenly spread over all combinations; always the same ones. */
    public List<Choices> spread(int most) {
        long stride = Math.max(1, Math.round(combinations() * GOLDEN_CUT));
        while (!BigInteger.valueOf(stride)
                .gcd(BigInteger.valueOf(combinations()))
                .equals(BigInteger.ONE)) {
            stride++;
        }
        return walk(stride, most);
    }

    /** With a stride that has no divisor in common with the number of combinations, the walk comes by each once. */
    private List<Choices> walk(long stride, int most) {
        List<Choices> valid = new ArrayList<>();
        long combinations = combinations();
        long number = 0;
        for (long step = 0; step < combinations && valid.size() < most; step++) {
            Map<OptionName, String> values = values(number);
            if (new PlainChoice(family, values).valid()) {
                valid.add(Choices.of(family, values));
            }
            number = (number + stride) % combinations;
        }
        return valid;
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
