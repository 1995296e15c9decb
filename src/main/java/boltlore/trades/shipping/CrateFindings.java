package boltlore.trades.shipping;

import static boltlore.trades.shipping.Told.kg;

import boltlore.catalogue.CrateType;
import boltlore.catalogue.EnvelopeMm;
import boltlore.measure.Digits;
import boltlore.measure.LineName;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** What is not packed or not known, and crates that are awkward to lift. */
final class CrateFindings {

    private static final String CRATES = "Crates";
    private static final String NOT_PACKED = "Not packed";

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    private final Shipment shipment;
    private final List<ShipFinding> findings = new ArrayList<>();

    private CrateFindings(Shipment shipment) {
        this.shipment = shipment;
    }

    static List<ShipFinding> of(Shipment shipment) {
        CrateFindings found = new CrateFindings(shipment);
        if (shipment.shipping().crates().isEmpty()) {
            return List.of(
                    ShipFinding.stops(CRATES, "The workshop's shipping.json names no crate: nothing is packed."));
        }
        shipment.tooLarge().forEach(found::tooLarge);
        found.undecided();
        shipment.byCustomer().forEach(extra -> found.look(NOT_PACKED, extra.says() + ": the customer supplies it."));
        shipment.crates().forEach(found::crate);
        found.guessed();
        return found.findings;
    }

    private void look(String about, String says) {
        findings.add(ShipFinding.look(about, says));
    }

    private void tooLarge(Packed packed) {
        Goods goods = packed.goods();
        String size = goods.size() == null ? "" : ", " + mm(goods.size());
        String each = kg(goods.measured() ? packed.kg() : goods.kg(BigDecimal.ONE));
        String which = goods.says() + " (" + each + size + ")";
        String says = oneFits(goods)
                ? packed.quantity().toPlainString() + " of " + which
                        + " are more than can be packed. Look at the quantity."
                : which + " goes into no crate" + kinds(goods) + largest(goods);
        findings.add(ShipFinding.stops(CRATES, says));
    }

    private boolean oneFits(Goods goods) {
        Room room = new Room(shipment.shipping());
        List<Packed> one = List.of(new Packed(goods, BigDecimal.ONE));
        return !goods.measured()
                && shipment.shipping().crates().stream()
                        .filter(type -> type.onlyDangerous() == (goods.transport() != null))
                        .anyMatch(type -> room.takesAlone(type, one));
    }

    private static String kinds(Goods goods) {
        return goods.transport() == null ? " of the workshop. " : " that is kept for dangerous goods. ";
    }

    private String largest(Goods goods) {
        boolean dangerous = goods.transport() != null;
        return shipment.shipping().crates().stream()
                .filter(type -> type.onlyDangerous() == dangerous)
                .max(Comparator.comparing(CrateType::payloadKg))
                .map(type -> "The strongest, '" + type.name() + "', takes " + kg(type.payloadKg()) + " within "
                        + mm(type.inside()) + ".")
                .orElse("There is none in shipping.json.");
    }

    private static String mm(EnvelopeMm size) {
        return size.length() + " x " + size.width() + " x " + size.height() + " mm";
    }

    private void undecided() {
        List<String> brackets = shipment.heldBack().stream()
                .flatMap(held -> held.brackets().stream())
                .map(LineName::text)
                .distinct()
                .sorted()
                .toList();
        if (!shipment.heldBack().isEmpty()) {
            findings.add(ShipFinding.stops(
                    NOT_PACKED,
                    Told.some(brackets) + ": brackets that carry nothing, and the order does not say whether they ship."
                            + " Settle 'leftOut' in the order first: contents and values would change."));
        }
    }

    private void crate(Crate crate) {
        if (!crate.unweighed().isEmpty()) {
            List<String> names =
                    crate.unweighed().stream().map(each -> each.goods().name()).toList();
            look(
                    CRATES,
                    "Crate " + crate.number() + " weighs more than it says: nobody knows the mass of "
                            + Told.some(names) + ". Weigh it.");
        }
        crate.heart(shipment.shipping().lifting()).ifPresent(heart -> heart(crate, heart));
    }

    private void heart(Crate crate, Goods heart) {
        look(
                CRATES,
                "Crate " + crate.number() + ": " + heart.says() + " weighs " + kg(heart.kg(BigDecimal.ONE))
                        + ", more than half of what is in it. Set it low and in the middle, block it on all sides and"
                        + " mark the centre of gravity.");
    }

    private void guessed() {
        BigDecimal guessed = sum(Crate::guessedLitres);
        if (guessed.signum() > 0) {
            String each = Digits.upTo(shipment.shipping().litresPerKg(), 1);
            look(
                    CRATES,
                    "Sizes of many parts are not known. They were given " + each + " litres for each kilogram, "
                            + Digits.upTo(guessed, 1) + " of " + Digits.upTo(sum(Crate::litres), 1) + " litres in all"
                            + most()
                            + ": look whether everything goes in before lids are screwed on.");
        }
    }

    /** Crates of which more than half was guessed. */
    private String most() {
        List<Crate> crates = shipment.crates().stream()
                .filter(crate -> crate.guessedLitres().multiply(TWO).compareTo(crate.litres()) > 0)
                .toList();
        return crates.isEmpty() ? "" : ", most of what is in " + Told.crates(crates);
    }

    private BigDecimal sum(Function<Crate, BigDecimal> of) {
        return shipment.crates().stream().map(of).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
