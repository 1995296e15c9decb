package boltlore.resolution;

import boltlore.measure.LineName;
import java.util.List;

/**
 * A line that an order leaves out although it is not an unused bracket of its kit.
 *
 * @param carries lines in the kit that it carries; empty where it is no bracket or not in the kit at all
 */
public record WrongLeftOut(LineName line, boolean inKit, List<LineName> carries) {}
