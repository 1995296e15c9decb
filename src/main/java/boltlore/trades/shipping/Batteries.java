package boltlore.trades.shipping;

import boltlore.catalogue.ShippedBattery;
import boltlore.catalogue.Shipping;
import boltlore.measure.PartNumber;

/** What the workshop knows of batteries. */
public final class Batteries {

    private static final PartNumber NONE = new PartNumber("-");

    private Batteries() {}

    /** What is known of that one; of one that nobody has told of nothing is taken for granted. */
    public static ShippedBattery known(Shipping shipping, Goods goods) {
        PartNumber part = goods.part() == null ? NONE : goods.part().number();
        return shipping.batteries().getOrDefault(part, new ShippedBattery(part, false, false, "", null));
    }
}
