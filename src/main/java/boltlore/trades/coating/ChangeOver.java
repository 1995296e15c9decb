package boltlore.trades.coating;

import boltlore.catalogue.BoothWork;
import java.math.BigDecimal;

/**
 * A booth cleaned down from one powder to another.
 *
 * @param from powder that was in the booth, or empty where that is not known
 * @param toDarker whether the next powder is known to be darker
 * @param labour of the people who clean, in the workshop's currency, unrounded
 * @param powder value of what is lost, in the workshop's currency, unrounded
 */
public record ChangeOver(
        String from, String to, boolean toDarker, BoothWork work, BigDecimal labour, BigDecimal powder) {

    public BigDecimal cost() {
        return labour.add(powder);
    }
}
