package boltlore.trades.shipping;

import boltlore.catalogue.Customs;
import boltlore.catalogue.Part;
import boltlore.catalogue.Transport;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Dangerous goods that lack what they must say of themselves. */
final class DangerousFindings {

    private static final String DANGEROUS = "Dangerous goods";

    private DangerousFindings() {}

    static List<ShipFinding> of(Shipment shipment) {
        List<Goods> goods = goods(shipment).toList();
        return Stream.of(
                        goods.stream().map(DangerousFindings::unmarked),
                        shipment.dangerous().stream().map(DangerousFindings::entry),
                        goods.stream().map(DangerousFindings::incomplete))
                .flatMap(all -> all)
                .flatMap(Optional::stream)
                .toList();
    }

    private static Stream<Goods> goods(Shipment shipment) {
        return Stream.concat(
                        shipment.crates().stream().flatMap(crate -> crate.packed().stream()),
                        shipment.tooLarge().stream())
                .map(Packed::goods)
                .distinct();
    }

    /** A battery by its customs code that no UN number is known of. */
    static Optional<ShipFinding> unmarked(Goods goods) {
        Part part = goods.part();
        Customs customs = part == null ? null : part.customs();
        if (customs == null
                || goods.transport() != null
                || !Tariff.digits(customs.hs()).startsWith("8507")) {
            return Optional.empty();
        }
        return Optional.of(ShipFinding.stops(
                DANGEROUS,
                goods.says() + " is a battery by its customs code " + customs.hs()
                        + " and has no UN number. Put 'transport' to the part as its safety data sheet says."));
    }

    private static Optional<ShipFinding> entry(DangerousGoods dangerous) {
        String where = dangerous.un() + " in " + Told.crates(dangerous.crates());
        UnNumber un = dangerous.entry().orElse(null);
        if (un == null) {
            String says =
                    where + " is not among the numbers that this program knows: points, class and packing are for the"
                            + " dangerous-goods adviser.";
            return Optional.of(ShipFinding.stops(DANGEROUS, says));
        }
        String says = where + " is for vehicles with their battery in them. A battery in a crate of a kit travels as "
                + UnNumber.LITHIUM_ION.un() + ".";
        return un == UnNumber.LITHIUM_VEHICLE ? Optional.of(ShipFinding.stops(DANGEROUS, says)) : Optional.empty();
    }

    private static Optional<ShipFinding> incomplete(Goods goods) {
        Transport transport = goods.transport();
        return transport == null
                ? Optional.empty()
                : UnNumber.of(transport.un())
                        .flatMap(un -> fault(un, transport))
                        .map(says -> ShipFinding.stops(DANGEROUS, goods.says() + says));
    }

    private static Optional<String> fault(UnNumber un, Transport transport) {
        if (un.lithium() && transport.wattHours() == null) {
            return Optional.of(
                    " travels as " + un.un() + " and its energy in Wh is not known. Put 'wattHours' to the part.");
        }
        String told = transport.hazardClass();
        return told == null || told.equals(un.hazardClass())
                ? Optional.empty()
                : Optional.of(" has class " + told + ", but " + un.un() + " is of class " + un.hazardClass() + ".");
    }
}
