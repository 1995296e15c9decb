package boltlore.choices;

import boltlore.catalogue.FinishRule;
import org.jspecify.annotations.Nullable;

/** The finish that a finish role takes under an order's choices. */
public final class FinishChosen {

    private FinishChosen() {}

    /** Null while the option that decides it is open. */
    public static @Nullable String by(FinishRule rule, Choices choices) {
        if (rule instanceof FinishRule.DecidedBy decided) {
            return choices.family()
                    .option(decided.option())
                    .flatMap(option -> choices.value(option.name()).flatMap(option::value))
                    .map(value -> value.facts().finish())
                    .orElse(null);
        }
        return ((FinishRule.Fixed) rule).finish();
    }
}
