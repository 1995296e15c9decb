package boltlore.trades.costing;

import java.math.BigDecimal;
import java.util.Collection;

/**
 * Sums over rows of the costed bill.
 *
 * @param made cost of what is made, without coating
 * @param bought cost of what is bought, without coating
 * @param massKg without the film of powder
 */
public record Totals(BigDecimal made, BigDecimal bought, BigDecimal coating, BigDecimal massKg) {

    public static final Totals NONE = new Totals(BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO);

    static Totals of(Collection<ItemCost> rows) {
        Totals sum = NONE;
        for (ItemCost row : rows) {
            sum = sum.plus(row);
        }
        return sum;
    }

    /** Without coating. */
    public BigDecimal own() {
        return made.add(bought);
    }

    public BigDecimal cost() {
        return own().add(coating);
    }

    private Totals plus(ItemCost row) {
        return new Totals(
                row.made() ? made.add(row.extended()) : made,
                row.made() ? bought : bought.add(row.extended()),
                coating.add(row.coating()),
                massKg.add(row.massKg()));
    }
}
