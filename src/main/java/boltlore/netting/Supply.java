package boltlore.netting;

import boltlore.netting.PlanningData.ScheduledReceipt;
import java.math.BigDecimal;
import java.util.List;

/**
 * Something that covers requirements, and which.
 *
 * @param period from which on it is there
 * @param pegs what it covers, in the order in which it does; what is left over stays in stock
 */
public record Supply(From from, int period, BigDecimal quantity, List<Peg> pegs) {

    /** Where it comes from. */
    public sealed interface From {

        /** It lies in stock. */
        record OnHand() implements From {}

        /** It is on its way. */
        record Scheduled(ScheduledReceipt receipt) implements From {}

        /** It should be ordered or made. */
        record Planned(PlannedReceipt receipt) implements From {}
    }

    /**
     * A slice of a requirement that a supply covers.
     *
     * @param from how much of the requirement earlier supplies cover
     */
    public record Peg(Requirement requirement, BigDecimal from, BigDecimal quantity) {}

    /** What no requirement asks for. */
    public BigDecimal spare() {
        return pegs.stream().map(Peg::quantity).reduce(quantity, BigDecimal::subtract);
    }
}
