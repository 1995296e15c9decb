package boltlore.trades.coating;

import boltlore.bill.Item;
import boltlore.bill.Masses;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.Coater;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Oven;
import boltlore.catalogue.Part;
import boltlore.catalogue.Powder;
import boltlore.catalogue.PowderCoat;
import boltlore.catalogue.TooLarge;
import java.math.BigDecimal;
import java.util.Optional;

/** What coating costs, in the workshop's currency, unrounded. */
public final class CoatingCost {

    private CoatingCost() {}

    /** Coating of the item's whole quantity; nothing for an item that is not coated. */
    public static BigDecimal compute(Item item, Finish finish, Catalogue catalogue) {
        return compute(item.part(), finish, catalogue).multiply(item.quantity());
    }

    /**
     * Coating of one of the part; nothing for a part that is not coated. In the own oven each coat costs its labour, gas
     * and powder again; outside the coater's price by area or by piece is all of it, and so it is where a piece does not go
     * into the own oven and a coater is named for those.
     */
    public static BigDecimal compute(Part part, Finish finish, Catalogue catalogue) {
        CoatingShop shop = catalogue.workshop().coating();
        return compute(part, finish, shop, Masses.eachKg(part, catalogue::part));
    }

    /** @param massKg of one of the part with all that is in it */
    static BigDecimal compute(Part part, Finish finish, CoatingShop shop, BigDecimal massKg) {
        CoatingSpec coat = part.coat();
        if (coat == null) {
            return BigDecimal.ZERO;
        }
        return takenOut(coat, finish, shop, massKg).isPresent()
                ? outside(coat.areaM2(), massKg, finish, shop)
                : ofArea(coat.areaM2(), finish, shop);
    }

    /** Who coats one of the part outside, because its finish is put on there or the own oven does not take it. */
    public static Optional<Coater> coater(Part part, Finish finish, Catalogue catalogue) {
        CoatingShop shop = catalogue.workshop().coating();
        CoatingSpec coat = part.coat();
        if (coat == null) {
            return Optional.empty();
        }
        if (finish.where() instanceof CoatedWhere.OutsideByArea byArea) {
            return Optional.ofNullable(shop.coaters().get(byArea.coater()));
        }
        if (finish.where() instanceof CoatedWhere.OutsideByPiece byPiece) {
            return Optional.ofNullable(shop.coaters().get(byPiece.coater()));
        }
        return takenOut(coat, finish, shop, Masses.eachKg(part, catalogue::part))
                .flatMap(tooLarge -> Optional.ofNullable(shop.coaters().get(tooLarge.coater())));
    }

    /** Who is named for a piece that does not go into the own oven that its finish is cured in. */
    private static Optional<TooLarge> takenOut(CoatingSpec coat, Finish finish, CoatingShop shop, BigDecimal massKg) {
        Oven oven =
                finish.where() instanceof CoatedWhere.OwnOven own ? shop.ovens().get(own.oven()) : null;
        return oven == null || TooBig.why(coat, massKg, oven).isEmpty()
                ? Optional.empty()
                : Optional.ofNullable(oven.tooLarge());
    }

    /** Coating of one piece with that area in m². */
    private static BigDecimal ofArea(BigDecimal areaM2, Finish finish, CoatingShop shop) {
        if (finish.where() instanceof CoatedWhere.OutsideByArea byArea) {
            return byArea.pricePerM2().multiply(areaM2);
        }
        if (finish.where() instanceof CoatedWhere.OutsideByPiece byPiece) {
            return byPiece.pricePerPiece();
        }
        return finish.coats().stream().map(coat -> own(areaM2, coat, shop)).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Coating of one piece by an outside coater; of a finish of our own, of a piece that our oven does not take. */
    static BigDecimal outside(BigDecimal areaM2, BigDecimal massKg, Finish finish, CoatingShop shop) {
        if (!(finish.where() instanceof CoatedWhere.OwnOven own)) {
            return ofArea(areaM2, finish, shop);
        }
        Oven oven = shop.ovens().get(own.oven());
        TooLarge tooLarge = oven == null ? null : oven.tooLarge();
        return tooLarge == null
                ? BigDecimal.ZERO
                : tooLarge.pricePerM2()
                        .multiply(areaM2)
                        .multiply(BigDecimal.valueOf(finish.coats().size()))
                        .add(tooLarge.freightPerKg().multiply(massKg));
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
