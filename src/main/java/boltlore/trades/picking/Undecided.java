package boltlore.trades.picking;

import boltlore.bill.Bill;
import boltlore.bill.BillMaker;
import boltlore.bill.Item;
import boltlore.bill.Origin;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.Kit;
import boltlore.resolution.Requirer;
import boltlore.resolution.Resolution;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Brackets that carry nothing in this kit and of which nobody has said yet whether they ship. */
final class Undecided {

    private Undecided() {}

    static SortedSet<LineName> lines(Bill bill) {
        return bill.resolved().findings().stream()
                .filter(finding -> finding.kind() == FindingKind.UNUSED)
                .map(Finding::subject)
                .map(LineName::new)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * The bill of what ships whatever is decided. Made anew rather than filtered: what the brackets share with others at
     * a joint may be fewer without them, or not.
     */
    static Bill sure(FamilyPlan plan, Bill bill) {
        SortedSet<LineName> undecided = lines(bill);
        if (undecided.isEmpty()) {
            return bill;
        }
        Resolution.Resolved resolved = bill.resolved();
        Kit kit = resolved.kit();
        SortedSet<LineName> sure = new TreeSet<>(kit.lines());
        sure.removeAll(undecided);
        Kit smaller = new Kit(
                sure,
                kit.leftOut(),
                kit.unused(),
                kit.filled(),
                kit.reasons(),
                kit.quantities(),
                kit.finishes(),
                kit.cautions());
        return BillMaker.make(
                plan, bill.order(), new Resolution.Resolved(resolved.choices(), smaller, resolved.findings()));
    }

    /** What the bill holds beyond the sure one, as it is picked. */
    static List<OnHold> onHold(Bill bill, Bill sure, Walk walk) {
        if (lines(bill).isEmpty()) {
            return List.of();
        }
        SortedMap<LineName, Set<PartNumber>> brackets = partsByBracket(bill);
        SortedMap<Piece, BigDecimal> kept = new TreeMap<>();
        sure.picked().forEach(item -> kept.merge(Piece.of(item), item.quantity(), BigDecimal::add));
        SortedMap<Piece, List<Item>> pieces =
                bill.picked().collect(Collectors.groupingBy(Piece::of, TreeMap::new, Collectors.toList()));
        return pieces.values().stream()
                .map(items -> held(items, kept.getOrDefault(Piece.of(items.get(0)), BigDecimal.ZERO), brackets))
                .filter(held -> held.quantity().signum() > 0)
                .sorted(Comparator.comparing((OnHold held) -> held.part().bin(), walk.order()))
                .toList();
    }

    private static OnHold held(List<Item> items, BigDecimal kept, SortedMap<LineName, Set<PartNumber>> brackets) {
        Item first = items.get(0);
        BigDecimal all = items.stream().map(Item::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
        List<LineName> calling = brackets.entrySet().stream()
                .filter(bracket -> items.stream().anyMatch(item -> calls(bracket.getKey(), bracket.getValue(), item)))
                .map(Map.Entry::getKey)
                .toList();
        return new OnHold(first.part(), first.finish(), all.subtract(kept), calling);
    }

    /** Whether the item hangs on that bracket line: it stands there, or the bracket's ask is the largest at its joint. */
    private static boolean calls(LineName bracket, Set<PartNumber> itsParts, Item item) {
        if (item.origin() instanceof Origin.AtJoint joint) {
            return joint.asker() instanceof Requirer.OfPart asker
                    ? itsParts.contains(asker.part())
                    : joint.asker().name().equals(bracket.text());
        }
        return item.line().equals(bracket);
    }

    private static SortedMap<LineName, Set<PartNumber>> partsByBracket(Bill bill) {
        SortedMap<LineName, Set<PartNumber>> parts = new TreeMap<>();
        lines(bill).forEach(line -> parts.put(line, new TreeSet<>()));
        bill.all()
                .filter(item -> parts.containsKey(item.line()))
                .filter(item -> !(item.origin() instanceof Origin.AtJoint))
                .forEach(item -> parts.getOrDefault(item.line(), new TreeSet<>())
                        .add(item.part().number()));
        return parts;
    }
}
