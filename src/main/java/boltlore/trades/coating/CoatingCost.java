package boltlore.trades.coating;

import boltlore.bill.Item;
import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Oven;
import boltlore.catalogue.Part;
import boltlore.catalogue.Powder;
import boltlore.catalogue.PowderCoat;
import boltlore.catalogue.TooLarge;
import java.math.BigDecimal;

/** What coating costs, in the workshop's currency, unrounded. */
public final class CoatingCost {

    private CoatingCost() {}

    /** Coating of the item's whole quantity; nothing for an item that is not coated. */
    public static BigDecimal compute(Item item, Finish finish, CoatingShop shop) {
        return compute(item.part(), finish, shop).multiply(item.quantity());
    }

    /**
     * Coating of one of the part; nothing for a part that is not coated. In the own oven each coat costs its labour, gas
     * and powder again; outside the coater's price by area or by piece is all of it.
     */
    public static BigDecimal compute(Part part, Finish finish, CoatingShop shop) {
        CoatingSpec coat = part.coat();
        return coat == null ? BigDecimal.ZERO : ofArea(coat.areaM2(), finish, shop);
    }

    /** Coating of one piece with that area in m². */
    static BigDecimal ofArea(BigDecimal areaM2, Finish finish, CoatingShop shop) {
        if (finish.where() instanceof CoatedWhere.OutsideByArea byArea) {
            return byArea.pricePerM2().multiply(areaM2);
        }
        if (finish.where() instanceof CoatedWhere.OutsideByPiece byPiece) {
            return byPiece.pricePerPiece();
        }
        return finish.coats().stream().map(coat -> own(areaM2, coat, shop)).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Coating of one piece by an outside coater; of a finish of our own, of a piece that our oven does not take. */
    static BigDecimal outside(BigDecimal areaM2, Finish finish, CoatingShop shop) {
        if (!(finish.where() instanceof CoatedWhere.OwnOven own)) {
            return ofArea(areaM2, finish, shop);
        }
        Oven oven = shop.ovens().get(own.oven());
        TooLarge tooLarge = oven == null ? null : oven.tooLarge();
        return tooLarge == null
                ? BigDecimal.ZERO
                : tooLarge.pricePerM2()
                        .multiply(areaM2)
                        .multiply(BigDecimal.valueOf(finish.coats().size()));
    }

    private static BigDecimal own(BigDecimal areaM2, PowderCoat coat, CoatingShop shop) {
        return shop.ownCostPerM2().multiply(areaM2).add(powder(areaM2, coat, shop));
    }

    private static BigDecimal powder(BigDecimal areaM2, PowderCoat coat, CoatingShop shop) {
        Powder powder = shop.powders().get(coat.powder());
        if (powder == null) {
            throw new IllegalArgumentException("No powder " + coat.powder() + " in the coating shop");
        }
        return FilmMass.issue(areaM2, coat).multiply(powder.pricePerKg());
    }
}
