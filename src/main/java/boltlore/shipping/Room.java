package boltlore.shipping;

import boltlore.catalogue.CrateType;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Shipping;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What fits into crates: by its sides where they are known, by mass and by volume. */
record Room(Shipping shipping) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal MM3_IN_LITRE = BigDecimal.valueOf(1_000_000);

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
        return litres(type.inside()).multiply(shipping.fillPercent()).divide(HUNDRED);
    }

    /** Room of these: of their outer size, or where nobody measured, what the workshop gives to a kilogram. */
    BigDecimal litres(Packed packed) {
        EnvelopeMm size = packed.goods().size();
        return size == null
                ? packed.kg().multiply(shipping.litresPerKg())
                : litres(size).multiply(packed.quantity());
    }

    static BigDecimal litres(EnvelopeMm size) {
        return BigDecimal.valueOf(size.length())
                .multiply(BigDecimal.valueOf(size.width()))
                .multiply(BigDecimal.valueOf(size.height()))
                .divide(MM3_IN_LITRE);
    }

    /** Whether a box with these sides goes into one with those, edges along edges, turned any way. */
    private static boolean passes(@Nullable EnvelopeMm size, EnvelopeMm inside) {
        if (size == null) {
            return true;
        }
        int[] of = sides(size);
        int[] room = sides(inside);
        return of[0] <= room[0] && of[1] <= room[1] && of[2] <= room[2];
    }

    private static int[] sides(EnvelopeMm size) {
        int[] sides = {size.length(), size.width(), size.height()};
        Arrays.sort(sides);
        return sides;
    }
}
