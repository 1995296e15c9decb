package boltlore.sheets.bill;

import boltlore.order.Order;
import boltlore.pricing.PricedBill;
import boltlore.sheets.Kind;
import boltlore.sheets.Particulars;
import boltlore.sheets.ParticularsBuilder;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** How long the kit takes, against the time there is. */
final class TimeBlock {

    private TimeBlock() {}

    static ParticularsBuilder of(PricedBill priced) {
        Order order = priced.bill().order();
        int leadDays = priced.leadDays();
        ParticularsBuilder says = Particulars.named("time")
                .say("lead", "Lead time of the kit, calendar days", Kind.whole(), BigDecimal.valueOf(leadDays));
        LocalDate due = order.due();
        if (due != null) {
            LocalDate first = due.minusDays(leadDays);
            says.say("first", "First part to order or release by", first);
            if (order.placed() != null) {
                says.say("slack", "Against the date of the order", slack(order.placed(), first));
            }
        }
        return says;
    }

    private static String slack(LocalDate placed, LocalDate first) {
        long days = ChronoUnit.DAYS.between(placed, first);
        return days < 0
                ? -days + " days too late: what is not in stock must be hurried, or the due date moves"
                : days + " days to spare";
    }
}
