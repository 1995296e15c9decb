package boltlore.catalogue;

import boltlore.measure.PositionName;
import boltlore.measure.Wording;

/**
 * A section of a manual.
 *
 * @param number as it is printed in the manual
 * @param from position of the kit that holds the manual
 * @param when in which kits it applies
 */
public record ManualSection(String number, Wording says, PositionName from, Condition when) {}
