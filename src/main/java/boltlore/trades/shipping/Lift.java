package boltlore.trades.shipping;

import boltlore.catalogue.Lifting;
import java.math.BigDecimal;

/** Who or what lifts something of that mass. */
public enum Lift {
    ONE_PERSON,
    TWO_PERSONS,
    /** A pallet truck, fork-lift or hoist that is rated for it. */
    GEAR;

    public static Lift of(BigDecimal kg, Lifting lifting) {
        if (kg.compareTo(lifting.onePersonKg()) <= 0) {
            return ONE_PERSON;
        }
        return kg.compareTo(lifting.twoPersonsKg()) <= 0 ? TWO_PERSONS : GEAR;
    }
}
