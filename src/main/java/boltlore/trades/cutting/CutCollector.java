package boltlore.trades.cutting;

import boltlore.bill.Bill;
import boltlore.bill.Costs;
import boltlore.bill.Item;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.measure.PartNumber;
import boltlore.order.Extra;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.SortedMap;
import java.util.TreeMap;

/** The parts that the workshop makes for one order, of all levels of its bill and of its extras. */
final class CutCollector {

    private final Bill bill;
    private final Catalogue catalogue;
    private final SortedMap<PartNumber, BigDecimal> made = new TreeMap<>();
    private final SortedMap<PartNumber, BigDecimal> onHold = new TreeMap<>();

    CutCollector(Bill bill, Catalogue catalogue) {
        this.bill = bill;
        this.catalogue = catalogue;
        bill.items().forEach(this::walk);
        bill.order().extra().stream()
                .filter(extra -> !extra.suppliedByCustomer())
                .forEach(this::extra);
    }

    /** How many of each part are made, scrap included, whole parts only. */
    SortedMap<PartNumber, Integer> made() {
        return whole(made);
    }

    /** How many belong to brackets of which nobody has said yet whether they ship. */
    SortedMap<PartNumber, Integer> onHold() {
        return whole(onHold);
    }

    /** What is bought has its parts in it already. */
    private void walk(Item item) {
        if (item.part().source() == Source.MAKE) {
            (isUndecided(item) ? onHold : made).merge(item.part().number(), item.quantity(), BigDecimal::add);
            item.inside().forEach(this::walk);
        }
    }

    private boolean isUndecided(Item item) {
        return bill.resolved().kit().unused().contains(item.line())
                && bill.resolved()
                        .findings()
                        .contains(new Finding(FindingKind.UNUSED, item.line().text()));
    }

    private void extra(Extra extra) {
        if (extra.part() != null) {
            add(catalogue.part(extra.part()), extra.quantity());
        }
    }

    private void add(Part part, BigDecimal quantity) {
        if (part.source() == Source.MAKE) {
            made.merge(part.number(), quantity, BigDecimal::add);
            part.contains().forEach(child -> add(catalogue.part(child.part()), quantity.multiply(child.quantity())));
        }
    }

    private SortedMap<PartNumber, Integer> whole(SortedMap<PartNumber, BigDecimal> quantities) {
        SortedMap<PartNumber, Integer> whole = new TreeMap<>();
        quantities.forEach((number, quantity) -> {
            Part part = catalogue.part(number);
            if (!part.making().cuts().isEmpty() || part.making().blank() != null) {
                whole.put(
                        number,
                        Costs.toIssue(quantity, part.scrapPercent())
                                .setScale(0, RoundingMode.CEILING)
                                .intValueExact());
            }
        });
        return whole;
    }
}
