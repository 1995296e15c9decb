package boltlore.sheets.bill;

import boltlore.order.Order;
import boltlore.pricing.PricedBill;
import boltlore.sheets.Kind;
import boltlore.sheets.Particulars;
import boltlore.sheets.ParticularsBuilder;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/** How long the kit takes, against the time there is. */
final class TimeBlock {

    private TimeBlock() {}

    static ParticularsBuilder of(PricedBill priced) {
        int leadDays = priced.leadDays();
        ParticularsBuilder says = Particulars.named("time")
                .say("lead", "Lead time of the kit, calendar days", Kind.whole(), BigDecimal.valueOf(leadDays));
        Order order = priced.bill().order();
        if (order.due() != null) {
            against(says, order.due().minusDays(leadDays), order.placed());
        }
        return says;
    }

    private static void against(ParticularsBuilder says, LocalDate first, @Nullable LocalDate placed) {
        says.say("first", "First part to order or release by", first);
        if (placed != null) {
            says.say("slack", "Against the date of the order", slack(placed, first));
        }
    }

    private static String slack(LocalDate placed, LocalDate first) {
        long days = ChronoUnit.DAYS.between(placed, first);
        return days < 0
                ? -days + " days too late: what is not in stock must be hurried, or the due date moves"
                : days + " days to spare";
    }
}
