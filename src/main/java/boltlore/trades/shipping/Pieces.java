package boltlore.trades.shipping;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** What goes apart where a bag does not go into one crate. */
final class Pieces {

    /** More pieces of one kind are handled by the handful. */
    private static final BigDecimal MOST = BigDecimal.valueOf(500);

    private Pieces() {}

    /** One by one; a can or coil stays whole. */
    static List<Packed> split(Packed packed) {
        if (packed.goods().measured()) {
            return List.of(packed);
        }
        BigDecimal step = packed.quantity().divide(MOST, 0, RoundingMode.UP).max(BigDecimal.ONE);
        List<Packed> pieces = new ArrayList<>();
        BigDecimal left = packed.quantity();
        while (left.signum() > 0) {
            pieces.add(new Packed(packed.goods(), left.min(step)));
            left = left.subtract(step);
        }
        return pieces;
    }

    /** Whether it is one piece, can or coil and nothing else. */
    static boolean lone(List<Packed> all) {
        return all.size() == 1
                && (all.get(0).goods().measured() || all.get(0).quantity().compareTo(BigDecimal.ONE) == 0);
    }

    /** Puts it to what is there of the same goods. */
    static void add(List<Packed> all, Packed more) {
        for (int i = 0; i < all.size(); i++) {
            Packed there = all.get(i);
            if (there.goods().equals(more.goods())) {
                all.set(i, new Packed(there.goods(), there.quantity().add(more.quantity())));
                return;
            }
        }
        all.add(more);
    }
}
