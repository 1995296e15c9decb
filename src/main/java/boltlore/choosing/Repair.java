package boltlore.choosing;

import boltlore.catalogue.OptionValue;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.measure.OptionName;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;

/**
 * Choices to change so that what is wanted can be had in a kit that nothing stops. None of the changes can be left away.
 *
 * @param givenUp choices as they were
 * @param taken what takes their place in the cheapest kit, in the same order
 * @param alternatives further values that could take their place, by option
 * @param choices all choices after the repair, what is wanted included
 * @param kit the cheapest complete kit after the repair; it resolves and nothing stops it
 * @param before the cheapest complete kit before; null where there was none
 */
public record Repair(
        List<Choice> givenUp,
        List<Choice> taken,
        SortedMap<OptionName, List<OptionValue>> alternatives,
        Choices choices,
        BestKit kit,
        @Nullable BestKit before) {

    /** How much higher the price of the cheapest kit is than before; empty where one of them has no price. */
    public Optional<BigDecimal> morePrice() {
        return before == null
                ? Optional.empty()
                : kit.price().flatMap(now -> before.price().map(now::subtract));
    }

    public int moreLeadDays() {
        return before == null ? kit.leadDays() : kit.leadDays() - before.leadDays();
    }
}
