package boltlore.trades.shipping.sheets;

import boltlore.trades.shipping.Lift;

/** Who lifts a crate, for the workshop's own pages. */
final class LiftWords {

    private LiftWords() {}

    static String of(Lift lift) {
        return switch (lift) {
            case ONE_PERSON -> "one person";
            case TWO_PERSONS -> "two people";
            case GEAR -> "pallet truck or hoist";
        };
    }
}
