package boltlore.logic;

import boltlore.catalogue.Condition;
import java.math.BigDecimal;

/** So many, in the orders that fulfil the condition, which ranges over options alone. */
public record Term(BigDecimal quantity, Condition when) {}
