package boltlore.netting;

import java.math.BigDecimal;

/**
 * So much of an item is asked for in a period; gross, what is lost in use included.
 *
 * @param period in which it must be there
 */
public record Requirement(int period, BigDecimal quantity, Asker asker) {

    /** Who asks. */
    public sealed interface Asker {

        /** Somebody outside: an order of a customer, by its name. */
        record FromOutside(String name) implements Asker {}

        /** A planned receipt of an item that is made of this one. */
        record ForPlanned(PlannedReceipt receipt) implements Asker {}

        /** The stock that shall not be gone below. */
        record Safety() implements Asker {}
    }
}
