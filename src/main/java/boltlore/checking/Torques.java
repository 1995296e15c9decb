package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Fixing;
import boltlore.catalogue.Part;
import java.math.BigDecimal;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A torque comes with its table and friction, for tables disagree; and it does not stretch the bolt. */
final class Torques {

    /** Tables for the same bolt and friction differ by up to 15 %. */
    private static final BigDecimal ABOVE = new BigDecimal("1.15");

    private Torques() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.parts().values().stream().flatMap(part -> of(part, part.fixing()));
    }

    private static Stream<Remark> of(Part part, @Nullable Fixing fixing) {
        return fixing == null || fixing.torqueNm() == null
                ? Stream.empty()
                : Stream.concat(alone(part, fixing), high(part, fixing, fixing.torqueNm()));
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

    private static Stream<Remark> high(Part part, Fixing fixing, BigDecimal torqueNm) {
        return TorqueTable.torqueNm(fixing)
                .filter(tableNm -> torqueNm.compareTo(tableNm.multiply(ABOVE)) > 0)
                .map(tableNm -> new Remark(
                        Said.part(part),
                        Check.TORQUE_HIGH,
                        Said.number(torqueNm) + " Nm for " + fixing.thread() + ", class " + fixing.propertyClass(),
                        "about " + Said.number(tableNm) + " Nm, at most 15 % more",
                        "Look at class, friction and unit of the torque"))
                .stream();
    }
}
