package boltlore.proof;

import boltlore.choices.Choice;
import java.util.List;

/**
 * What it is about an order that brings a defect about.
 *
 * @param choices that alone bring it about in every valid order that has them; none of them can be dropped. Empty where
 *     it happens in every valid order
 * @param onlyThen whether no other valid order has the defect
 */
public record Cause(List<Choice> choices, boolean onlyThen) {

    public static final Cause NONE = new Cause(List.of(), true);
}
