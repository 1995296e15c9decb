package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Fixing;
import boltlore.catalogue.Part;
import boltlore.catalogue.Port;
import boltlore.measure.Digits;
import boltlore.trades.fixings.PropertyClass;
import boltlore.trades.fixings.ScrewThread;
import boltlore.trades.fixings.Tightening;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A torque comes with its table and friction, for tables disagree; it clamps, and does not stretch the bolt; and a bolt whose
 * thread or class is not known is told, for nothing of it is compared.
 */
final class Torques {

    private Torques() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.parts().values().stream()
                .flatMap(part -> Stream.concat(check(part, part.fixing()), terminals(part)));
    }

    /** Of class 8.8 at 90 % of its yield and friction 0.12, in Nm: VDI 2230-1, as the tables of bolt makers print it; from memory. */
    private static final Map<String, BigDecimal> OF_STEEL = Map.of(
            "M4", new BigDecimal("2.9"),
            "M5", new BigDecimal("5.8"),
            "M6", new BigDecimal("10.1"),
            "M8", new BigDecimal("24.6"),
            "M10", new BigDecimal("48"),
            "M12", new BigDecimal("84"));

    /** Terminals of brass and of plastic bodies take a fifth at least: IEC 60947-1, table of tightening torques, from memory. */
    private static final BigDecimal TERMINAL_LEAST = new BigDecimal("0.2");

    private static Stream<Remark> terminals(Part part) {
        return part.ports().stream().flatMap(port -> {
            Port.Bolted bolted = port.bolted();
            BigDecimal torque = bolted == null ? null : bolted.torqueNm();
            BigDecimal steel = bolted == null ? null : OF_STEEL.get(bolted.designation());
            return bolted == null
                            || torque == null
                            || steel == null
                            || (torque.compareTo(steel) <= 0 && torque.compareTo(steel.multiply(TERMINAL_LEAST)) >= 0)
                    ? Stream.empty()
                    : Stream.of(new Remark(
                            Said.part(part),
                            Check.JOINT_FIGURE,
                            "a torque of " + Digits.plain(torque) + " Nm at the terminal of port " + port.name() + ", "
                                    + bolted.designation(),
                            Digits.upTo(steel.multiply(TERMINAL_LEAST), 1) + " to " + Digits.plain(steel)
                                    + " Nm, a fifth to all of what a steel bolt of that thread takes",
                            "Look at the point, and take it from the maker's data sheet: a loose lug burns"));
        });
    }

    private static Stream<Remark> check(Part part, @Nullable Fixing fixing) {
        if (fixing == null) {
            return Stream.empty();
        }
        return fixing.torqueNm() == null
                ? unknown(part, fixing)
                : Stream.of(unknown(part, fixing), alone(part, fixing), far(part, fixing, fixing.torqueNm()))
                        .flatMap(found -> found);
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
        return Tightening.of(fixing).flatMap(tightening -> far(part, fixing, torqueNm, tightening)).stream();
    }

    private static Optional<Remark> far(Part part, Fixing fixing, BigDecimal torqueNm, Tightening tightening) {
        Check check = switch (tightening.fit(torqueNm).orElse(Tightening.Fit.FITS)) {
            case FAR_BELOW -> Check.TORQUE_FAR_LOW;
            case BELOW -> Check.TORQUE_LOW;
            case FITS -> null;
            case ABOVE -> Check.TORQUE_HIGH;
            case FAR_ABOVE -> Check.TORQUE_FAR_HIGH;
        };
        return Optional.ofNullable(check)
                .map(found -> new Remark(
                        Said.part(part),
                        found,
                        Digits.plain(torqueNm) + " Nm for " + fixing.thread() + ", class " + fixing.propertyClass(),
                        "about " + said(tightening)
                                + " Nm, which uses 90 % of the yield: at least 90 % of it, at most 2 %" + " more",
                        "Check class, friction and unit of the torque; what a drawing or a maker asks for at one joint"
                                + " belongs in joints.json under 'torque'"));
    }

    private static String said(Tightening tightening) {
        return tightening
                .torqueNm()
                .map(computed -> Digits.plain(computed.setScale(1, RoundingMode.HALF_UP)))
                .orElse("");
    }

    /** Nuts have no length, and their class is of another kind. */
    private static Stream<Remark> unknown(Part part, Fixing fixing) {
        boolean thread =
                ScrewThread.of(fixing.thread()).flatMap(ScrewThread::bearingMm).isPresent();
        boolean bolt = fixing.torqueNm() != null || (fixing.lengthMm() != null && fixing.propertyClass() != null);
        boolean known = PropertyClass.of(fixing.propertyClass()).isPresent();
        return thread && (known || !bolt)
                ? Stream.empty()
                : Stream.of(new Remark(
                        Said.part(part),
                        Check.BOLT_UNKNOWN,
                        fixing.thread() + (fixing.propertyClass() == null ? "" : ", class " + fixing.propertyClass()),
                        "a thread such as M8, M8x1, 1/2-13 UNC or 7/16-20 UNF, and for bolts a class such as 8.8 or"
                                + " 'SAE J429 grade 5'",
                        "Its torque and length are compared with nothing: check how it is written, or judge it by"
                                + " hand"));
    }
}
