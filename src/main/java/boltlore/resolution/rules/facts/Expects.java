package boltlore.resolution.rules.facts;

import boltlore.resolution.Asker;
import java.math.BigDecimal;

/** The asker expects at least that many of a part, or lines at a position, when the condition holds. */
public record Expects(Asker asker, String target, BigDecimal atLeast, String condition) {}
