package boltlore.oracle;

import boltlore.bill.Bill;
import boltlore.bill.Costs;
import boltlore.bill.Masses;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What leaving brackets out saves: the difference of two whole kits, never a sum over single brackets.
 *
 * @param quantities of parts that the smaller kit has fewer of
 * @param cost unrounded, in the workshop's currency
 */
public record Saving(SortedMap<PartNumber, BigDecimal> quantities, BigDecimal cost, BigDecimal massKg) {

    public static Saving between(Bill withAll, Bill without) {
        SortedMap<PartNumber, BigDecimal> fewer = new TreeMap<>(withAll.quantities());
        without.quantities().forEach((part, quantity) -> fewer.merge(part, quantity.negate(), BigDecimal::add));
        fewer.values().removeIf(quantity -> quantity.signum() == 0);
        return new Saving(
                fewer,
                Costs.kit(withAll).subtract(Costs.kit(without)),
                Masses.kitKg(withAll).subtract(Masses.kitKg(without)));
    }
}
