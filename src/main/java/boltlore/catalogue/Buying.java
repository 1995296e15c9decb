package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a part is bought; pack and minimum in the part's own unit, at least one step where null.
 *
 * @param offers the preferred one first, whose supplier, code, pack and minimum the others are; empty where the part names one
 *     supplier and one cost
 */
public record Buying(
        String supplier,
        String orderCode,
        @Nullable BigDecimal packOf,
        @Nullable BigDecimal minimumOrder,
        List<Offer> offers) {

    /** From one supplier at one cost. */
    public Buying(String supplier, String orderCode, @Nullable BigDecimal packOf, @Nullable BigDecimal minimumOrder) {
        this(supplier, orderCode, packOf, minimumOrder, List.of());
    }

    /** From the first of some suppliers. */
    public static Buying of(List<Offer> offers) {
        Offer first = offers.get(0);
        return new Buying(first.supplier(), first.orderCode(), first.packOf(), first.minimumOrder(), offers);
    }

    /** The least number of whole packs that covers the wanted quantity and the least order; a pack is 1 where none is told. */
    public BigDecimal toOrder(BigDecimal wanted) {
        return Offer.toOrder(wanted, packOf, minimumOrder);
    }

    /** Prices by quantity of the preferred offer; empty where the price is one. */
    public List<Offer.PriceBreak> breaks() {
        return offers.isEmpty() || offers.get(0).breaks().size() < 2
                ? List.of()
                : offers.get(0).breaks();
    }
}
