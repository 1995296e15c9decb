package boltlore.desk.office;

import boltlore.book.ChangeState;
import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.QuotedVersion;
import boltlore.book.db.Reading;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * What waits for somebody.
 *
 * @param says in a sentence
 * @param path the page on which it is done
 */
public record Waits(String says, String path) {

    private static final String ORDER = "/sales/order/";
    private static final int MOST = 200;

    private static final List<OrderState> OWED =
            OrderState.ALL.stream().filter(OrderState::owed).toList();

    /**
     * Quotations, changes, orders and records, each with the next step.
     *
     * @param soonDays before a quotation runs out it is told so many days ahead
     */
    static List<Waits> all(Reading reading, LocalDate today, int soonDays) {
        List<Waits> all = new ArrayList<>(quotations(reading, today, soonDays));
        reading.changes()
                .in(ChangeState.PROPOSED)
                .forEach(change -> all.add(new Waits(
                        "Change " + change.number() + " of " + change.order() + " waits for a decision.",
                        ORDER + change.order() + "/changes")));
        reading.changes()
                .in(ChangeState.ACCEPTED)
                .forEach(change -> all.add(new Waits(
                        "Change " + change.number() + " of " + change.order() + " is accepted and not carried out.",
                        ORDER + change.order() + "/changes")));
        for (OrderStanding order : reading.orders().in(OWED, MOST)) {
            if (order.state() == OrderState.ORDERED) {
                all.add(new Waits("Work on " + order.name() + " has not begun.", "/bench"));
            } else if (order.state() == OrderState.TESTED) {
                all.add(new Waits(order.name() + " is tested and has not left.", "/bench/ship/" + order.name()));
            }
        }
        reading.shop()
                .lastNotPassed(OWED)
                .forEach(record -> all.add(new Waits(
                        "The last " + record.of() + " record of " + record.order() + " is not passed.",
                        record.of().equals("test")
                                ? "/bench/test/" + record.order() + "/report"
                                : "/fabrication/film/record?order=" + record.order())));
        return all;
    }

    private static List<Waits> quotations(Reading reading, LocalDate today, int soonDays) {
        List<Waits> all = new ArrayList<>();
        for (OrderStanding order : reading.orders().in(List.of(OrderState.QUOTED), MOST)) {
            List<QuotedVersion> versions = reading.orders().quotations(order.name());
            LocalDate until = versions.get(versions.size() - 1).offer().validUntil();
            if (!until.isAfter(today.plusDays(soonDays))) {
                all.add(new Waits(
                        "The quotation of " + order.name() + (until.isBefore(today) ? " ran" : " runs") + " out on "
                                + until + ".",
                        ORDER + order.name()));
            }
        }
        return all;
    }
}
