package boltlore.trades.shipping;

import boltlore.catalogue.CrateType;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Shipping;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a crate takes: by its sides where they are known, by mass and by volume. */
record CrateCapacity(Shipping shipping) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** Whether that much of these goes into one crate of that kind. */
    boolean takes(CrateType type, List<Packed> all) {
        BigDecimal litres = all.stream().map(this::litres).reduce(BigDecimal.ZERO, BigDecimal::add);
        return litres.compareTo(usableLitres(type)) <= 0 && takesAlone(type, all);
    }

    /** By mass and by the sides that are known, whatever room there is beside. */
    boolean takesAlone(CrateType type, List<Packed> all) {
        BigDecimal kg = all.stream().map(Packed::kg).reduce(BigDecimal.ZERO, BigDecimal::add);
        return kg.compareTo(type.payloadKg()) <= 0
                && all.stream().allMatch(each -> passes(each.goods().size(), type.inside()));
    }

    /** Inner volume that parts with their padding may fill. */
    BigDecimal usableLitres(CrateType type) {
        return type.inside().litres().multiply(shipping.fillPercent()).divide(HUNDRED);
    }

    /** Room of these: of their outer size, or where nobody measured, what the workshop gives to a kilogram. */
    BigDecimal litres(Packed packed) {
        EnvelopeMm size = packed.goods().size();
        return size == null
                ? packed.kg().multiply(shipping.litresPerKg())
                : size.litres().multiply(packed.quantity());
    }

    private static boolean passes(@Nullable EnvelopeMm size, EnvelopeMm inside) {
        return size == null || size.goesInto(inside);
    }
}
