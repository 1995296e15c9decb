package boltlore.resolution.rules.facts;

import boltlore.resolution.Requirer;
import java.math.BigDecimal;

/**
 * The asker expects at least that many of a part, or lines at a position, when the condition holds.
 *
 * @param target name for people
 * @param counted name of the {@link Amount} that tells it
 */
public record Expects(Requirer asker, String target, String counted, BigDecimal atLeast, ConditionKey condition) {}
