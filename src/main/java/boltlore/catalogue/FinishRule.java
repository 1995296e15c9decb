package boltlore.catalogue;

import boltlore.measure.OptionName;

/** How a finish role gets its finish. */
public sealed interface FinishRule {

    /** The chosen value's finish fact. */
    record DecidedBy(OptionName option) implements FinishRule {}

    record Fixed(String finish) implements FinishRule {}
}
