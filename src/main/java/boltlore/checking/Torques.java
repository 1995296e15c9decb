package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Fixing;
import boltlore.catalogue.Part;
import boltlore.measure.Digits;
import boltlore.trades.fixings.Tightening;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A torque comes with its table and friction, for tables disagree; and it does not stretch the bolt. */
final class Torques {

    /** Tables for the same bolt and friction differ by up to 15 %. */
    private static final BigDecimal ABOVE = new BigDecimal("1.15");

    /** Less than half is a slip of the unit, or a joint that never clamps. */
    private static final BigDecimal BELOW = new BigDecimal("0.5");

    private Torques() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.parts().values().stream().flatMap(part -> check(part, part.fixing()));
    }

    private static Stream<Remark> check(Part part, @Nullable Fixing fixing) {
        return fixing == null || fixing.torqueNm() == null
                ? Stream.empty()
                : Stream.concat(alone(part, fixing), far(part, fixing, fixing.torqueNm()));
    }

    private static Stream<Remark> alone(Part part, Fixing fixing) {
        boolean table = fixing.torqueTable() != null && !fixing.torqueTable().isBlank();
        return table && fixing.friction() != null
                ? Stream.empty()
                : Stream.of(new Remark(
                        Said.part(part),
                        Check.TORQUE_ALONE,
                        table ? "a torque without its friction" : "a torque without its table",
                        "table and friction beside each torque",
                        "Say where the torque comes from"));
    }

    private static Stream<Remark> far(Part part, Fixing fixing, BigDecimal torqueNm) {
        return Tightening.of(fixing)
                .flatMap(Tightening::torqueNm)
                .flatMap(expectedNm -> far(part, fixing, torqueNm, expectedNm))
                .stream();
    }

    private static Optional<Remark> far(Part part, Fixing fixing, BigDecimal torqueNm, BigDecimal expectedNm) {
        boolean high = torqueNm.compareTo(expectedNm.multiply(ABOVE)) > 0;
        return high || torqueNm.compareTo(expectedNm.multiply(BELOW)) < 0
                ? Optional.of(new Remark(
                        Said.part(part),
                        high ? Check.TORQUE_HIGH : Check.TORQUE_LOW,
                        Digits.plain(torqueNm) + " Nm for " + fixing.thread() + ", class " + fixing.propertyClass(),
                        "about " + Digits.plain(expectedNm.setScale(1, RoundingMode.HALF_UP))
                                + " Nm: at least half of it, at most 15 % more",
                        "Check class, friction and unit of the torque"))
                : Optional.empty();
    }
}
