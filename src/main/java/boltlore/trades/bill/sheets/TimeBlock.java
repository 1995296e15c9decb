package boltlore.trades.bill.sheets;

import boltlore.order.Order;
import boltlore.report.ParticularsBuilder;
import boltlore.trades.costing.CostedBill;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/** How long the kit takes, against the time there is. */
final class TimeBlock {

    private TimeBlock() {}

    static void add(ParticularsBuilder says, CostedBill costed) {
        int leadDays = costed.leadDays();
        says.say("lead", "Lead time of the kit", leadDays + " calendar days");
        Order order = costed.bill().order();
        if (order.due() != null) {
            against(says, order.due().minusDays(leadDays), order.placed());
        }
    }

    private static void against(ParticularsBuilder says, LocalDate first, @Nullable LocalDate placed) {
        says.say("first", "First part on order by", first);
        if (placed != null) {
            says.say("slack", "From the order to then", slack(placed, first));
        }
    }

    private static String slack(LocalDate placed, LocalDate first) {
        long days = ChronoUnit.DAYS.between(placed, first);
        return days < 0 ? -days + " days too late" : days + " days to spare";
    }
}
