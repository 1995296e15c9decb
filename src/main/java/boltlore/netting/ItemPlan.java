package boltlore.netting;

import boltlore.netting.PlanningData.ScheduledReceipt;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToIntFunction;

/**
 * What netting has made of one item.
 *
 * @param level its low-level code: 0 for what nothing planned is made of, else one more than the deepest that asks for it
 * @param gross requirements, the earliest first; the safety stock is none of them
 * @param brought receipts on their way that are needed in an earlier period than they are expected in
 * @param supplies all that covers the requirements, in the order in which it does
 */
public record ItemPlan(
        StockItem item,
        PlanningData data,
        int level,
        List<Requirement> gross,
        List<PlannedReceipt> planned,
        List<Brought> brought,
        List<Supply> supplies) {

    /**
     * A receipt that is needed earlier than it is expected.
     *
     * @param wanted the period in which it is needed
     * @param quantity of it that is
     */
    public record Brought(ScheduledReceipt receipt, int wanted, BigDecimal quantity) {}

    /** What is asked for in that period. */
    public BigDecimal grossIn(int period) {
        return sum(gross, Requirement::period, Requirement::quantity, period, period);
    }

    public BigDecimal scheduledIn(int period) {
        return sum(data.scheduled(), ScheduledReceipt::period, ScheduledReceipt::quantity, period, period);
    }

    /** The net requirement that calls for a receipt in that period. */
    public BigDecimal netIn(int period) {
        return sum(planned, PlannedReceipt::due, PlannedReceipt::net, period, period);
    }

    public BigDecimal receivedIn(int period) {
        return sum(planned, PlannedReceipt::due, PlannedReceipt::quantity, period, period);
    }

    public BigDecimal releasedIn(int period) {
        return sum(planned, PlannedReceipt::release, PlannedReceipt::quantity, period, period);
    }

    /** Projected on hand at the end of that period, if all is ordered and comes as planned. */
    public BigDecimal onHandAfter(int period) {
        return data.onHand()
                .add(sum(
                        data.scheduled(),
                        ScheduledReceipt::period,
                        ScheduledReceipt::quantity,
                        Integer.MIN_VALUE,
                        period))
                .add(sum(planned, PlannedReceipt::due, PlannedReceipt::quantity, Integer.MIN_VALUE, period))
                .subtract(sum(gross, Requirement::period, Requirement::quantity, Integer.MIN_VALUE, period));
    }

    private static <T> BigDecimal sum(
            List<T> all, ToIntFunction<T> period, Function<T, BigDecimal> quantity, int from, int to) {
        return all.stream()
                .filter(each -> period.applyAsInt(each) >= from && period.applyAsInt(each) <= to)
                .map(quantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
