package boltlore.proof.sample;

import boltlore.choices.Choice;
import boltlore.choices.Choices;
import java.util.List;

/**
 * A covering sample.
 *
 * @param orders valid orders that together have every coverable combination; none of them can be spared
 * @param coverable how many combinations of values of different options some valid order has
 * @param uncoverable the combinations that no valid order has
 * @param complete false where the time was up: then there may be more of each
 */
public record CoveringSample(List<Choices> orders, long coverable, List<List<Choice>> uncoverable, boolean complete) {}
