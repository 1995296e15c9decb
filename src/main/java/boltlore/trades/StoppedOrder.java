package boltlore.trades;

import boltlore.findings.Finding;
import boltlore.order.Order;
import java.time.LocalDate;

/**
 * An order of a run that something stops, so that it is on no sheet of the others.
 *
 * @param why the kinds of findings that stop it
 */
public record StoppedOrder(Order order, String why) {

    /** Said on what is made of the others. */
    public Finding finding() {
        LocalDate due = order.due();
        return Finding.of(
                KitFinding.ORDER_STOPPED,
                order.name(),
                "order",
                order.name(),
                "due",
                due == null ? "–" : due.toString(),
                "why",
                why);
    }
}
