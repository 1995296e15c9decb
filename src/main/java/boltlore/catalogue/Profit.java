package boltlore.catalogue;

import java.math.BigDecimal;

/** How a price is made of a cost: by a mark-up, a share of the cost, or by a margin, a share of the price. */
public record Profit(Share of, BigDecimal percent) {

    /** What the per cent are a share of. */
    public enum Share {
        COST,
        PRICE
    }

    public static Profit markUp(BigDecimal percent) {
        return new Profit(Share.COST, percent);
    }

    /** At least 0 and below 100. */
    public static Profit margin(BigDecimal percent) {
        return new Profit(Share.PRICE, percent);
    }

    public boolean isMargin() {
        return of == Share.PRICE;
    }
}
