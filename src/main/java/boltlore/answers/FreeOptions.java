package boltlore.answers;

import boltlore.catalogue.Option;
import boltlore.choices.Choices;
import boltlore.choices.Mentions;
import boltlore.measure.OptionName;
import java.util.Set;

/** Options that decide no part: one value stands for all of them. */
final class FreeOptions {

    private FreeOptions() {}

    /** The same choices with each open free option put at its first value. */
    static Choices settled(Choices partial) {
        Set<OptionName> deciding = Mentions.of(partial.family());
        Choices result = partial;
        for (Option option : partial.unsettled()) {
            if (!deciding.contains(option.name())) {
                result = result.with(option.name(), option.values().get(0).value());
            }
        }
        return result;
    }
}
