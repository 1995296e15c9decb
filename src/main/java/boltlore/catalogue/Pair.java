package boltlore.catalogue;

import boltlore.measure.OptionName;

/** Left and right parts of one kind. */
public sealed interface Pair {

    String name();

    /** One hand ships: the one that the option's value asks for, while it is due. */
    record One(String name, OptionName follows, String leftValue, String rightValue, Condition due) implements Pair {}

    /** Both hands ship in equal numbers. */
    record Both(String name) implements Pair {}
}
