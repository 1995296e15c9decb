package boltlore.book.stores;

import boltlore.book.ChangeState;
import boltlore.book.OrderChange;
import boltlore.book.db.Reading;
import boltlore.catalogue.Catalogue;
import boltlore.faults.Outcome;
import boltlore.findings.Findings;
import boltlore.measure.Digits;
import boltlore.trades.KitInWork;
import boltlore.trades.costing.path.KitTimes;
import boltlore.trades.cutting.CuttingTrade;
import boltlore.trades.cutting.MaterialCuts;
import boltlore.trades.cutting.SawnBar;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Bars of one material that all owed orders need which are not cut yet, after all that lies on the rack: the same plan as the
 * saw works from.
 *
 * @param pieces to be cut
 * @param fromRack bars and remnants on the rack that are used
 * @param toBuy how many of each length in mm
 * @param cost of those, in the workshop's currency
 * @param neededOn the first day on which a piece of it must be ready, so that no kit is late
 * @param orders that pieces of it are cut for
 */
public record BarNeed(
        String material,
        int pieces,
        long fromRack,
        SortedMap<BigDecimal, Long> toBuy,
        BigDecimal cost,
        String currency,
        LocalDate neededOn,
        List<String> orders) {

    private static final String CUT = "cut";

    /** By material; faulty where a piece cannot be cut at all. */
    public static Outcome<List<BarNeed>> of(Reading reading, List<KitInWork> owed, Catalogue catalogue) {
        List<KitInWork> open = owed.stream().filter(kit -> !isCut(reading, kit)).toList();
        if (open.isEmpty()) {
            return Outcome.sound(List.of());
        }
        return CuttingTrade.cut(
                        open.stream().map(KitInWork::bill).toList(), RackDesk.rack(reading), catalogue, Findings.NONE)
                .then(cut -> Outcome.sound(cut.plan().materials().stream()
                        .map(cuts -> of(cuts, open, catalogue))
                        .toList()));
    }

    /** Said to be cut, and not changed since: of a change that is not carried out yet some pieces may still be to cut. */
    private static boolean isCut(Reading reading, KitInWork kit) {
        String order = kit.order().name();
        List<OrderChange> changes = reading.changes().of(order);
        return changes.stream().noneMatch(change -> change.state() == ChangeState.ACCEPTED)
                && reading.changes().workOn(order).values().stream().anyMatch(stages -> stages.containsKey(CUT));
    }

    private static BarNeed of(MaterialCuts cuts, List<KitInWork> kits, Catalogue catalogue) {
        String material = cuts.material().name();
        List<KitInWork> asking =
                kits.stream().filter(kit -> cuts(kit, material)).toList();
        return new BarNeed(
                material,
                cuts.pieces(),
                cuts.bars().size() - cuts.bought(),
                cuts.bars().stream()
                        .filter(SawnBar::isBought)
                        .collect(Collectors.groupingBy(SawnBar::lengthMm, TreeMap::new, Collectors.counting())),
                cuts.cost(),
                catalogue.workshop().currency().getCurrencyCode(),
                asking.stream()
                        .map(kit -> neededOn(kit, material))
                        .min(LocalDate::compareTo)
                        .orElseThrow(),
                asking.stream().map(kit -> kit.order().name()).toList());
    }

    private static boolean cuts(KitInWork kit, String material) {
        return kit.bill()
                .all()
                .anyMatch(item -> item.part().making().cuts().stream()
                        .anyMatch(cut -> cut.material().equals(material)));
    }

    private static LocalDate neededOn(KitInWork kit, String material) {
        KitTimes times = KitTimes.of(kit.bill(), kit.catalogue());
        LocalDate told = kit.order().due();
        LocalDate due = told == null ? kit.today().plusDays(times.path().days()) : told;
        int before = kit.bill()
                .all()
                .filter(item -> item.part().making().cuts().stream()
                        .anyMatch(cut -> cut.material().equals(material)))
                .mapToInt(item -> times.of(item).readyDays())
                .max()
                .orElse(0);
        return due.minusDays(before);
    }

    /** 's235-tube-40x40x3: 14 pieces; 2 from the rack; to buy: 1 of 6000 mm (EUR 38.20), on the saw by 2026-11-30; for …'. */
    @Override
    public String toString() {
        String buy = toBuy.entrySet().stream()
                .map(each -> each.getValue() + " of " + Digits.plain(each.getKey()) + " mm")
                .collect(Collectors.joining(", "));
        return material + ": " + pieces + " pieces; " + fromRack + " from the rack; "
                + (buy.isEmpty()
                        ? "nothing to buy"
                        : "to buy: " + buy + " (" + currency + " " + cost.toPlainString() + ")")
                + ", pieces ready by " + neededOn + "; for " + String.join(", ", orders);
    }
}
