package boltlore.catalogue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one supplier asks for a part. Quantities are in the part's unit.
 *
 * @param currency in which the supplier is paid
 * @param packOf whole packs only; one at a time where null
 * @param breaks prices by the quantity of one order, the smallest quantity first; at least one
 */
public record Offer(
        String supplier,
        String orderCode,
        Currency currency,
        int leadDays,
        @Nullable BigDecimal packOf,
        @Nullable BigDecimal minimumOrder,
        List<PriceBreak> breaks) {

    /**
     * A price that holds from a quantity on.
     *
     * @param cost of one, in the supplier's currency
     * @param homeCost of one, in the workshop's currency
     */
    public record PriceBreak(BigDecimal from, BigDecimal cost, BigDecimal homeCost) {}

    /** The least number of whole packs that covers the wanted quantity and the least order. */
    public BigDecimal toOrder(BigDecimal wanted) {
        return toOrder(wanted, packOf, minimumOrder);
    }

    static BigDecimal toOrder(BigDecimal wanted, @Nullable BigDecimal packOf, @Nullable BigDecimal minimumOrder) {
        BigDecimal pack = packOf == null ? BigDecimal.ONE : packOf;
        BigDecimal least = minimumOrder == null ? BigDecimal.ZERO : minimumOrder;
        return wanted.max(least).divide(pack, 0, RoundingMode.UP).multiply(pack);
    }

    /** The price at which that quantity is ordered; a quantity below the first break pays the first price. */
    public PriceBreak at(BigDecimal ordered) {
        return breaks.stream()
                .filter(priceBreak -> priceBreak.from().compareTo(ordered) <= 0)
                .reduce((below, reached) -> reached)
                .orElse(breaks.get(0));
    }
}
