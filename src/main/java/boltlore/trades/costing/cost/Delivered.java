package boltlore.trades.costing.cost;

import boltlore.catalogue.Customs;
import boltlore.catalogue.Delivery;
import boltlore.catalogue.Duty;
import boltlore.catalogue.Landing;
import boltlore.measure.Percent;
import boltlore.trades.costing.MinorUnit;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Freight and duty of bought goods. Landed cost: price + freight + duty + clearance; duty is a per cent of the customs
 * value, which holds the freight to the border where the importing country's law says so (Agreement on Implementation of
 * Article VII of the GATT 1994, article 8.2, leaves that to each country; from memory).
 *
 * @param dutyPercent 0 where none is due
 */
record Delivered(BigDecimal freight, BigDecimal dutyPercent, BigDecimal duty) {

    /**
     * Of goods at that price.
     *
     * @param delivery of their supplier, or null where it delivers free
     * @param massKg of all of them
     */
    static Delivered of(
            BigDecimal price,
            BigDecimal massKg,
            @Nullable Customs customs,
            @Nullable Delivery delivery,
            Landing landing,
            MinorUnit unit) {
        BigDecimal freight = unit.round(delivery == null ? BigDecimal.ZERO : freight(price, massKg, delivery));
        BigDecimal value = landing.dutyOnFreight() ? price.add(freight) : price;
        BigDecimal percent = percent(customs, landing);
        return new Delivered(freight, percent, unit.round(value.multiply(Percent.fraction(percent))));
    }

    private static BigDecimal freight(BigDecimal price, BigDecimal massKg, Delivery delivery) {
        BigDecimal perKg = delivery.perKg();
        BigDecimal percent = delivery.percent() == null ? BigDecimal.ZERO : delivery.percent();
        return perKg == null ? price.multiply(Percent.fraction(percent)) : perKg.multiply(massKg);
    }

    /** Goods of which no customs data is told are taken as the country's own. */
    static BigDecimal percent(@Nullable Customs customs, Landing landing) {
        return customs == null
                ? BigDecimal.ZERO
                : landing.duty(customs).map(Duty::percent).orElse(BigDecimal.ZERO);
    }
}
