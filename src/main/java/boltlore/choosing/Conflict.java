package boltlore.choosing;

import boltlore.catalogue.Limit;
import boltlore.choices.Choice;
import java.util.List;

/**
 * Choices that cannot be combined (or not with what is wanted in addition), and limits that already forbid it. None of
 * the choices can be dropped, and with these choices none of the limits.
 *
 * @param choices in the family's order of options; none where no order at all does what is wanted
 * @param limits in the family's order; none where the choices exclude what is wanted by themselves
 */
public record Conflict(List<Choice> choices, List<Limit> limits) {}
