package boltlore.trades.shipping;

import java.math.BigDecimal;

/** So much of some goods in one crate, in their unit and with spares. */
public record Packed(Goods goods, BigDecimal quantity) {

    public BigDecimal kg() {
        return goods.kg(quantity);
    }
}
