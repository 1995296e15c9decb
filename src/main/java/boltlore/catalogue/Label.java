package boltlore.catalogue;

import boltlore.measure.PositionName;
import boltlore.measure.Wording;
import java.util.List;

/**
 * A label on the finished vehicle.
 *
 * @param says what it says
 * @param where where it goes
 * @param mark sign or marking by a standard, empty where none is known
 * @param from position of the kit that holds the label
 * @param at positions at which one goes, one by one, where something stands there; empty: one for the kit
 */
public record Label(
        String name,
        Wording says,
        Wording where,
        Wording mark,
        PositionName from,
        Condition when,
        List<PositionName> at) {}
