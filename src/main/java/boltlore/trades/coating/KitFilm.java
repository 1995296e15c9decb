package boltlore.trades.coating;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.catalogue.Finish;
import java.math.BigDecimal;
import java.util.Map;

/** The film of powder on a whole kit, which no part's own mass holds. */
public final class KitFilm {

    private KitFilm() {}

    /** Mass in kg of all cured film on what is coated for the kit, unrounded. */
    public static BigDecimal kg(Bill bill, Map<String, Finish> finishes) {
        return bill.items().stream().map(item -> ofWhole(item, finishes)).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Mass in kg of all cured film on an item of the bill's first level and on all inside it, unrounded. */
    public static BigDecimal ofWhole(Item item, Map<String, Finish> finishes) {
        return item.all().filter(Item::coated).map(each -> kg(each, finishes)).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal kg(Item item, Map<String, Finish> finishes) {
        Finish finish = finishes.get(item.finish());
        return finish == null
                ? BigDecimal.ZERO
                : FilmMass.compute(item.part(), finish).multiply(item.quantity());
    }
}
