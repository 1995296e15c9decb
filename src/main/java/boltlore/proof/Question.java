package boltlore.proof;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Limit;
import org.jspecify.annotations.Nullable;

/** What a statement asks of all orders of a family. */
public sealed interface Question {

    /**
     * Whether some order fulfils a condition over options.
     *
     * @param someIsSound whether the statement wants such an order, or wants none
     * @param under the limits that the orders keep
     */
    record Asked(Condition condition, boolean someIsSound, Under under) implements Question {}

    /** Not asked, because the condition outgrew its bound. */
    record TooLarge(String why) implements Question {}

    /** Which limits the orders keep. */
    enum Keeps {
        ALL,
        ALL_BUT_ONE,
        NONE
    }

    /**
     * The limits that the orders keep.
     *
     * @param but the one limit that need not be kept
     */
    record Under(Keeps keeps, @Nullable Limit but) {
        public static final Under ALL_LIMITS = new Under(Keeps.ALL, null);
        public static final Under NO_LIMIT = new Under(Keeps.NONE, null);

        public static Under allBut(Limit limit) {
            return new Under(Keeps.ALL_BUT_ONE, limit);
        }
    }

    static Question noOrder(Condition condition) {
        return new Asked(condition, false, Under.ALL_LIMITS);
    }

    static Question someOrder(Condition condition) {
        return new Asked(condition, true, Under.ALL_LIMITS);
    }
}
