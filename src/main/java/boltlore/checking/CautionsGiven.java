package boltlore.checking;

import boltlore.bill.Masses;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Joined;
import boltlore.catalogue.Lifting;
import boltlore.catalogue.Part;
import boltlore.catalogue.Transport;
import boltlore.measure.PartNumber;
import boltlore.trades.picking.Units;
import boltlore.trades.shipping.Fits;
import boltlore.trades.shipping.Lift;
import boltlore.trades.shipping.Tariff;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Parts that can hurt say so. */
final class CautionsGiven {

    /** Lithium cells alone or packed with equipment, ion and metal: UN numbers of the transport rules, from memory. */
    private static final Set<String> LITHIUM_UN = Set.of("3480", "3481", "3090", "3091");

    private static final Set<String> WITH_EQUIPMENT = Set.of("3481", "3091");

    private static final String GEAR = "lift-gear";

    private CautionsGiven() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        Map<PartNumber, String> highVoltage = HighVoltageParts.in(catalogue);
        return catalogue.parts().values().stream()
                .flatMap(part -> Stream.of(
                        Optional.ofNullable(highVoltage.get(part.number()))
                                .flatMap(because -> without(part, "high-voltage", Check.HIGH_VOLTAGE, because)),
                        welding(part),
                        lithium(part),
                        otherGoods(part),
                        alone(part),
                        lifting(part, catalogue)))
                .flatMap(Optional::stream);
    }

    private static Optional<Remark> welding(Part part) {
        return part.structure().joined() == Joined.WELDED
                ? without(part, "welding", Check.WELDING, "it is welded")
                : Optional.empty();
    }

    private static Optional<Remark> lithium(Part part) {
        Transport transport = part.transport();
        return transport != null && isLithium(part)
                ? without(part, "lithium", Check.LITHIUM, "it travels as " + transport.un())
                : Optional.empty();
    }

    /** A lithium battery by its customs code or its caution travels under no other number: other papers would hide it. */
    private static Optional<Remark> otherGoods(Part part) {
        return Fits.lithium(part) && part.transport() != null && !isLithium(part)
                ? Optional.of(new Remark(
                        Said.part(part),
                        Check.UN_NUMBER,
                        "'" + part.transport().un() + "' for a lithium battery by its customs code or its caution",
                        "UN 3480, UN 3481, UN 3090 or UN 3091",
                        "Take the number from its safety data sheet: it decides how it is packed and who may carry it"))
                : Optional.empty();
    }

    /** A battery of the part master is no equipment: it lies in crates with batteries alone. ADR 2025, 2.2.9.1.7 and chapter 3.2. */
    private static Optional<Remark> alone(Part part) {
        boolean battery = part.customs() != null
                && Tariff.LITHIUM_ION.covers(part.customs().hs());
        Transport transport = part.transport();
        return battery && transport != null && WITH_EQUIPMENT.contains(digits(transport))
                ? Optional.of(
                        new Remark(
                                Said.part(part),
                                Check.UN_NUMBER,
                                "'" + transport.un() + "' for a battery by its customs code, which is no equipment",
                                "UN 3480 or UN 3090: UN 3481 and UN 3091 are for batteries packed with equipment or in it",
                                "Take the number from its safety data sheet; with equipment it travels only as a safety adviser packs it"))
                : Optional.empty();
    }

    private static String digits(Transport transport) {
        return transport.un().replaceAll("[^0-9]", "");
    }

    static boolean isLithium(Part part) {
        Transport transport = part.transport();
        return transport != null && LITHIUM_UN.contains(digits(transport));
    }

    private static Optional<Remark> lifting(Part part, Catalogue catalogue) {
        BigDecimal mass = Masses.eachKg(part, catalogue::part);
        Lifting lifting = catalogue.shipping().lifting();
        if (Units.measured(part.unit()) || part.cautions().contains(GEAR)) {
            return Optional.empty();
        }
        return switch (Lift.of(mass, lifting)) {
            case ONE_PERSON -> Optional.empty();
            case TWO_PERSONS ->
                without(part, "lift-two", Check.LIFTING, heavier(mass, lifting.onePersonKg(), "one person lifts"));
            case GEAR -> without(part, GEAR, Check.LIFTING, heavier(mass, lifting.twoPersonsKg(), "two people lift"));
        };
    }

    /** The workshop's own limits, which crates go by as well. */
    private static String heavier(BigDecimal mass, BigDecimal limit, String who) {
        return "it weighs " + Said.kg(mass) + ", more than the " + Said.kg(limit) + " that " + who
                + " ('lifting' in shipping.json)";
    }

    private static Optional<Remark> without(Part part, String caution, Check check, String because) {
        return part.cautions().contains(caution)
                ? Optional.empty()
                : Optional.of(new Remark(
                        Said.part(part),
                        check,
                        "no caution '" + caution + "'",
                        "that caution, for " + because,
                        "Add it to the part's cautions, so that it stands on the sheets"));
    }
}
