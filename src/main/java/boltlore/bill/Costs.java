package boltlore.bill;

import boltlore.catalogue.Source;
import boltlore.measure.Percent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** Cost of items from the part master, before coating and mark-up, in the workshop's currency. */
public final class Costs {

    private Costs() {}

    /** Quantity to issue so that the needed quantity is left after scrap: needed / (1 − scrap). */
    public static BigDecimal toIssue(BigDecimal needed, BigDecimal scrapPercent) {
        return scrapPercent.signum() == 0 ? needed : needed.divide(Percent.rest(scrapPercent), MathContext.DECIMAL128);
    }

    /** What the item itself adds to the cost of the kit, scrap included, unrounded; children add their own. */
    public static BigDecimal own(Item item) {
        return toIssue(item.quantity(), item.part().scrapPercent())
                .multiply(item.part().cost());
    }

    /** Material and making cost of the whole kit, unrounded. */
    public static BigDecimal kit(Bill bill) {
        return bill.items().stream().map(Costs::whole).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** The item with all inside it; what is bought has its parts in its own cost. */
    private static BigDecimal whole(Item item) {
        BigDecimal sum = BigDecimal.ZERO;
        Deque<Item> open = new ArrayDeque<>(List.of(item));
        while (!open.isEmpty()) {
            Item next = open.pop();
            sum = sum.add(own(next));
            if (next.part().source() != Source.BUY) {
                next.inside().forEach(open::push);
            }
        }
        return sum;
    }
}
