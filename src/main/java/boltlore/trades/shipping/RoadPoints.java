package boltlore.trades.shipping;

import java.math.BigDecimal;
import java.util.Collection;

/**
 * Points of dangerous goods in one vehicle by the exemption by quantity (ADR 1.1.3.6): mass times the factor of the
 * transport category, summed over all goods; up to 1000 the load is exempt from plates, from a specially trained driver
 * and from more. For articles the mass without packaging counts (1.1.3.6.3, from memory).
 */
public record RoadPoints(BigDecimal points) {

    public static final BigDecimal LIMIT = BigDecimal.valueOf(1000);

    public static RoadPoints of(UnNumber un, BigDecimal netKg) {
        return new RoadPoints(netKg.multiply(un.pointsPerKg()));
    }

    /** Of all goods that are listed; what is not listed has no points here and is told elsewhere. */
    public static RoadPoints of(Collection<DangerousGoods> all) {
        return new RoadPoints(all.stream()
                .flatMap(goods ->
                        goods.entry().stream().map(un -> of(un, goods.netKg()).points()))
                .reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    /** Whether the exemption applies. */
    public boolean exempt() {
        return points.compareTo(LIMIT) <= 0;
    }
}
