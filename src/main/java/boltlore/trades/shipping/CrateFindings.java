package boltlore.trades.shipping;

import static boltlore.trades.shipping.NumberFormats.number;

import boltlore.bill.Origin;
import boltlore.catalogue.CrateType;
import boltlore.catalogue.OwnCrate;
import boltlore.catalogue.Shipping;
import boltlore.catalogue.UsualCrate;
import boltlore.findings.Finding;
import boltlore.measure.LineName;
import boltlore.measure.Wording;
import boltlore.trades.KitFinding;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is not packed or not known, and crates that are awkward to lift. */
final class CrateFindings {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    private final Shipment shipment;
    private final List<Finding> findings = new ArrayList<>();

    private CrateFindings(Shipment shipment) {
        this.shipment = shipment;
    }

    static List<Finding> find(Shipment shipment) {
        if (shipment.shipping().crates().isEmpty()) {
            return List.of(
                    shipment.shipping().equals(Shipping.NONE)
                            ? Finding.of(
                                    KitFinding.NOT_JUDGED,
                                    ShippingTrade.NAME,
                                    "trade",
                                    "Shipping",
                                    "file",
                                    "workshop/shipping.json")
                            : Finding.of(ShippingFinding.NO_CRATES, "crates"));
        }
        CrateFindings found = new CrateFindings(shipment);
        shipment.tooLarge().forEach(found::tooLarge);
        found.undecided();
        shipment.byCustomer()
                .forEach(extra -> found.add(ShippingFinding.SUPPLIED_BY_CUSTOMER, extra.says(), "extra", extra.says()));
        shipment.crates().forEach(found::crate);
        found.sizesByMass();
        found.usual();
        return found.findings;
    }

    private void add(ShippingFinding kind, String subject, Object... named) {
        findings.add(Finding.of(kind, subject, named));
    }

    /** Crates of the kit, extras not counted, beside those that its price holds. */
    private void usual() {
        Shipping shipping = shipment.shipping();
        List<String> own = shipping.ownCrates().stream().map(OwnCrate::bag).toList();
        int priced = shipping.usual().stream()
                .filter(usual -> shipment.bill().items().stream()
                        .anyMatch(item -> item.origin() instanceof Origin.OwnLine && usual.takes(item.position(), own)))
                .mapToInt(UsualCrate::count)
                .sum();
        long packed = shipment.crates().stream()
                .filter(crate -> !crate.load().extras())
                .count();
        if (!shipping.usual().isEmpty() && priced != packed) {
            add(ShippingFinding.CRATES_NOT_AS_PRICED, "crates", "packed", packed, "priced", priced);
        }
    }

    private void tooLarge(Packed packed) {
        Goods goods = packed.goods();
        List<Object> named = new ArrayList<>(List.of("goods", goods.says()));
        named.addAll(List.of("mass", number(goods.measured() ? packed.kg() : goods.kg(BigDecimal.ONE), 1)));
        named.addAll(List.of("sized", goods.size() == null ? 0 : 1));
        named.addAll(List.of("size", goods.size() == null ? "" : NumberFormats.size(goods.size())));
        Optional<CrateType> strongest = types(goods).max(Comparator.comparing(CrateType::payloadKg));
        ShippingFinding kind = ShippingFinding.NO_CRATE_OF_THAT_KIND;
        if (oneFits(goods)) {
            kind = ShippingFinding.MORE_THAN_CAN_BE_PACKED;
            named.addAll(List.of("quantity", number(packed.quantity(), 3)));
        } else {
            named.addAll(List.of("dangerous", goods.transport() == null ? 0 : 1));
            if (strongest.isPresent()) {
                kind = ShippingFinding.GOES_INTO_NO_CRATE;
                CrateType crate = strongest.get();
                named.addAll(List.of("crate", crate.name(), "payload", number(crate.payloadKg(), 1)));
                named.addAll(List.of("inside", NumberFormats.size(crate.inside())));
            }
        }
        add(kind, goods.name(), named.toArray());
    }

    private boolean oneFits(Goods goods) {
        CrateCapacity capacity = new CrateCapacity(shipment.shipping());
        List<Packed> one = List.of(new Packed(goods, BigDecimal.ONE));
        return !goods.measured() && types(goods).anyMatch(type -> capacity.takesAlone(type, one));
    }

    /** Crates that are meant for it. */
    private Stream<CrateType> types(Goods goods) {
        boolean dangerous = goods.transport() != null;
        return shipment.shipping().crates().stream().filter(type -> type.onlyDangerous() == dangerous);
    }

    private void undecided() {
        List<LineName> brackets = shipment.onHold().stream()
                .flatMap(held -> held.brackets().stream())
                .distinct()
                .sorted()
                .toList();
        if (!shipment.onHold().isEmpty()) {
            add(
                    ShippingFinding.BRACKETS_NOT_DECIDED,
                    "leftOut",
                    "brackets",
                    named(brackets),
                    "more",
                    Math.max(0, brackets.size() - NumberFormats.NAMED));
        }
    }

    /** The first few by what stands in the kit's line, with its id: 'Compressor bracket (compressor-bracket)'. */
    private Wording named(List<LineName> brackets) {
        Map<String, String> said = new TreeMap<>();
        for (String language : List.of("en", "de", "fr")) {
            said.put(
                    language,
                    brackets.stream()
                            .limit(NumberFormats.NAMED)
                            .map(line -> name(line).in(language) + " (" + line + ")")
                            .collect(Collectors.joining(", ")));
        }
        return new Wording(said);
    }

    private Wording name(LineName line) {
        return shipment.bill().items().stream()
                .filter(item -> item.line().equals(line))
                .map(item -> item.part().name())
                .findFirst()
                .orElse(Wording.english(line.text()));
    }

    private void crate(Crate crate) {
        String subject = "crate " + crate.number();
        List<String> unweighed =
                crate.unweighed().stream().map(each -> each.goods().name()).toList();
        if (!unweighed.isEmpty()) {
            add(
                    ShippingFinding.CRATE_MASS_NOT_KNOWN,
                    subject,
                    "crate",
                    crate.number(),
                    "parts",
                    NumberFormats.first(unweighed),
                    "more",
                    NumberFormats.more(unweighed));
        }
        crate.heart(shipment.shipping().lifting())
                .ifPresent(heart -> add(
                        ShippingFinding.ONE_PIECE_HEAVIEST,
                        subject,
                        "crate",
                        crate.number(),
                        "goods",
                        heart.says(),
                        "mass",
                        number(heart.kg(BigDecimal.ONE), 1)));
    }

    private void sizesByMass() {
        BigDecimal byMass = sum(Crate::guessedLitres);
        List<Crate> mostly = shipment.crates().stream()
                .filter(crate -> crate.guessedLitres().multiply(TWO).compareTo(crate.litres()) > 0)
                .toList();
        if (byMass.signum() > 0) {
            add(
                    ShippingFinding.SIZES_BY_MASS,
                    "crates",
                    "each",
                    number(shipment.shipping().litresPerKg(), 1),
                    "byMass",
                    number(byMass, 1),
                    "litres",
                    number(sum(Crate::litres), 1),
                    "count",
                    mostly.size(),
                    "crates",
                    NumberFormats.numbers(mostly));
        }
    }

    private BigDecimal sum(Function<Crate, BigDecimal> of) {
        return shipment.crates().stream().map(of).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
