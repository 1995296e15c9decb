package boltlore.book.stores;

import boltlore.bill.Item;
import boltlore.bill.Origin;
import boltlore.book.KitDifference;
import boltlore.book.OrderChange;
import boltlore.book.db.Reading;
import boltlore.book.db.Stock;
import boltlore.book.orders.PartsToday;
import boltlore.catalogue.JointFacts;
import boltlore.catalogue.Part;
import boltlore.catalogue.PartKind;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.trades.KitInWork;
import boltlore.trades.picking.CoatedRow;
import boltlore.trades.picking.PickingList;
import boltlore.trades.picking.PickingTrade;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What one order gets of one part in one finish.
 *
 * @param wanted with the spares for its bags
 * @param got of it, or of what stands in for it
 * @param missing as it was told that the bin holds too little
 * @param safety whether drive, battery, steering, brakes or people hang on it, or high voltage
 */
public record PickLine(
        String order, Part part, String finish, BigDecimal wanted, BigDecimal got, BigDecimal missing, boolean safety) {

    /** Cautions of parts that a kit is not complete without, whoever agrees: people are hurt where one is missing. */
    private static final Set<String> HURTS = Set.of("high-voltage", "lithium", "lifting-eye");

    public BigDecimal left() {
        return wanted.subtract(got).max(BigDecimal.ZERO);
    }

    public String key() {
        return Stock.key(part.number().text(), finish);
    }

    /** All lines of a kit with what the order has got of each. */
    public static List<PickLine> of(Reading reading, KitInWork kit) {
        String order = kit.order().name();
        Map<String, BigDecimal> got = new TreeMap<>();
        reading.stock().issuedTo(order).forEach(issued -> {
            String for_ = issued.instead().isEmpty() ? issued.held().part() : issued.instead();
            got.merge(Stock.key(for_, issued.held().finish()), issued.quantity(), BigDecimal::add);
        });
        Map<String, BigDecimal> missing = reading.stock().shortOf(order);
        Set<String> safety = safetyParts(kit);
        return wanted(reading, kit)
                .map(line -> new PickLine(
                        order,
                        line.part(),
                        line.finish(),
                        line.wanted(),
                        got.getOrDefault(line.key(), BigDecimal.ZERO),
                        missing.getOrDefault(line.key(), BigDecimal.ZERO),
                        safety.contains(line.part().number().text())))
                .toList();
    }

    /** Parts that service orders have added to the kit. */
    private static Map<Part, BigDecimal> serviceParts(Reading reading, KitInWork kit) {
        Map<PartNumber, Part> parts = kit.once(
                        PartsToday.class, any -> new PartsToday(kit.catalogue().parts()))
                .parts();
        Map<Part, BigDecimal> added = new LinkedHashMap<>();
        reading.changes().of(kit.order().name()).stream()
                .filter(change -> change.asker().equals(OrderChange.SERVICE))
                .forEach(change -> KitDifference.of(
                                reading.orders().lines(change.from()),
                                reading.orders().lines(change.stands().kit()))
                        .changes()
                        .forEach(each -> {
                            Part part = parts.get(new PartNumber(each.piece().part()));
                            if (part != null && each.comesIn()) {
                                added.merge(part, each.amount(), BigDecimal::add);
                            }
                        }));
        return added;
    }

    private static Stream<PickLine> wanted(Reading reading, KitInWork kit) {
        PickingList list = PickingTrade.list(kit);
        Map<String, PickLine> lines = new TreeMap<>();
        Stream.concat(list.walk().stream(), list.fromCoating().stream().map(CoatedRow::row))
                .forEach(row ->
                        add(lines, kit, row.part(), row.finish(), row.quantity().add(row.spares())));
        serviceParts(reading, kit).forEach((part, more) -> add(lines, kit, part, "", more));
        list.extras().stream()
                .filter(extra -> extra.part() != null && !extra.extra().suppliedByCustomer())
                .forEach(extra -> add(
                        lines,
                        kit,
                        Objects.requireNonNull(extra.part()),
                        extra.part().coat() == null ? "" : extra.extra().finish(),
                        extra.extra().quantity()));
        return lines.values().stream();
    }

    private static void add(Map<String, PickLine> lines, KitInWork kit, Part part, String finish, BigDecimal more) {
        PickLine line = new PickLine(kit.order().name(), part, finish, more, BigDecimal.ZERO, BigDecimal.ZERO, false);
        lines.merge(
                line.key(),
                line,
                (one, other) -> new PickLine(
                        one.order(),
                        one.part(),
                        one.finish(),
                        one.wanted().add(other.wanted()),
                        BigDecimal.ZERO,
                        BigDecimal.ZERO,
                        false));
    }

    /** Parts at joints that are signed for, those whose cautions say so, and those that no vehicle is to be without. */
    private static Set<String> safetyParts(KitInWork kit) {
        List<JointFacts> signed =
                kit.family().joints().stream().filter(JointFacts::safety).toList();
        Set<PositionName> positions = signed.stream()
                .map(JointFacts::position)
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
        Set<String> shared = signed.stream()
                .map(JointFacts::joint)
                .filter(joint -> !joint.isEmpty())
                .collect(Collectors.toSet());
        List<PartKind> protecting = protecting(kit);
        return kit.bill()
                .picked()
                .filter(item -> positions.contains(item.position().name())
                        || at(item, shared)
                        || hurts(item)
                        || item.all().anyMatch(each -> protecting.stream().anyMatch(kind -> kind.covers(each.part()))))
                .map(item -> item.part().number().text())
                .collect(Collectors.toSet());
    }

    /** Kinds that the workshop says a vehicle must have, brakes and interlock among them, and what those are there for. */
    private static List<PartKind> protecting(KitInWork kit) {
        Map<String, PartKind> kinds = kit.catalogue().house().kinds();
        Set<String> names = kinds.values().stream()
                .filter(kind -> kind.needed() != null)
                .flatMap(kind ->
                        Stream.concat(Stream.of(kind.name()), Objects.requireNonNull(kind.needed()).with().stream()))
                .collect(Collectors.toSet());
        return kinds.values().stream()
                .filter(kind -> names.contains(kind.name()))
                .toList();
    }

    private static boolean at(Item item, Set<String> joints) {
        return item.origin() instanceof Origin.AtJoint joint && joints.contains(joint.joint());
    }

    private static boolean hurts(Item item) {
        return item.all().anyMatch(each -> each.part().cautions().stream().anyMatch(HURTS::contains));
    }
}
