package boltlore.picking;

import boltlore.bill.Bill;
import boltlore.bill.BillMaker;
import boltlore.bill.Item;
import boltlore.measure.LineName;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.Kit;
import boltlore.resolution.Resolution;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
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
        return BillMaker.of(
                plan, bill.order(), new Resolution.Resolved(resolved.choices(), smaller, resolved.findings()));
    }

    /** What the bill holds beyond the sure one, as it is picked. */
    static List<HeldBack> heldBack(Bill bill, Bill sure, Walk walk) {
        SortedSet<LineName> undecided = lines(bill);
        SortedMap<Piece, BigDecimal> kept = new TreeMap<>();
        sure.picked().forEach(item -> kept.merge(Piece.of(item), item.quantity(), BigDecimal::add));
        SortedMap<Piece, List<Item>> pieces =
                bill.picked().collect(Collectors.groupingBy(Piece::of, TreeMap::new, Collectors.toList()));
        return pieces.values().stream()
                .map(items -> held(items, kept.getOrDefault(Piece.of(items.get(0)), BigDecimal.ZERO), undecided))
                .filter(held -> held.quantity().signum() > 0)
                .sorted(Comparator.comparing((HeldBack held) -> held.part().bin(), walk.order()))
                .toList();
    }

    private static HeldBack held(List<Item> items, BigDecimal kept, SortedSet<LineName> undecided) {
        Item first = items.get(0);
        BigDecimal all = items.stream().map(Item::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
        List<LineName> brackets = items.stream()
                .map(Item::line)
                .filter(undecided::contains)
                .distinct()
                .sorted()
                .toList();
        return new HeldBack(first.part(), first.finish(), all.subtract(kept), brackets);
    }
}
