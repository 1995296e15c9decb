package boltlore.trades.costing;

import boltlore.bill.Item;
import boltlore.bill.Masses;
import boltlore.catalogue.Source;
import boltlore.trades.costing.path.Timing;
import java.math.BigDecimal;

/**
 * A row of the costed bill. Amounts are in the workshop's currency, rounded half-up to the minor unit, so that totals add
 * what is printed.
 *
 * @param insideBought whether it comes inside something that is bought: its cost is in that, its mass is its own
 * @param extended quantity / (1 − scrap) × unit cost; children add their own
 * @param coating for the whole quantity
 */
public record ItemCost(Item item, boolean insideBought, BigDecimal extended, BigDecimal coating, Timing timing) {

    public BigDecimal total() {
        return extended.add(coating);
    }

    /** What one of it costs in this row: nothing inside a bought assembly. */
    public BigDecimal unitCost() {
        return insideBought ? BigDecimal.ZERO : item.part().cost();
    }

    public boolean made() {
        return item.part().source() == Source.MAKE;
    }

    public BigDecimal massKg() {
        return Masses.ownKg(item);
    }

    public String subSystem() {
        return item.position().subSystem();
    }
}
