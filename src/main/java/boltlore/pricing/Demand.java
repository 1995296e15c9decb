package boltlore.pricing;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.measure.PartNumber;
import boltlore.order.Extra;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * How many of a part the kit and the extras together ask for.
 *
 * @param quantity needed, scrap not yet added, in the part's unit
 * @param extraQuantity how many of them are extras
 * @param timing of the earliest place
 */
record Demand(Part part, String finish, BigDecimal quantity, BigDecimal extraQuantity, Timing timing) {

    /** Of all parts that are bought or made as such, by part number; nothing inside what is bought. */
    static SortedMap<PartNumber, Demand> of(PricedBill priced, Predicate<Part> wanted) {
        List<Demand> single = new ArrayList<>();
        for (PricedItem row : priced.rows()) {
            if (!row.insideBought()) {
                single.add(new Demand(
                        row.item().part(), row.item().finish(), row.item().quantity(), BigDecimal.ZERO, row.timing()));
            }
        }
        for (Extra extra : priced.bill().order().extra()) {
            if (extra.part() != null && !extra.suppliedByCustomer()) {
                LeadTimes leadTimes = new LeadTimes(priced.catalogue());
                Part part = priced.catalogue().part(extra.part());
                extra(part, extra.quantity(), leadTimes.ofKitPart(part, ""), priced.catalogue(), single);
            }
        }
        SortedMap<PartNumber, Demand> sums = new TreeMap<>();
        single.stream()
                .filter(demand -> wanted.test(demand.part()))
                .forEach(demand -> sums.merge(demand.part().number(), demand, Demand::plus));
        return sums;
    }

    private static void extra(
            Part part, BigDecimal quantity, Timing timing, Catalogue catalogue, List<Demand> demands) {
        demands.add(new Demand(part, "", quantity, quantity, timing));
        if (part.source() == Source.MAKE) {
            LeadTimes leadTimes = new LeadTimes(catalogue);
            part.contains().forEach(child -> {
                Part childPart = catalogue.part(child.part());
                extra(
                        childPart,
                        quantity.multiply(child.quantity()),
                        leadTimes.ofChild(childPart, "", timing),
                        catalogue,
                        demands);
            });
        }
    }

    private Demand plus(Demand other) {
        return new Demand(
                part,
                finish.isEmpty() ? other.finish : finish,
                quantity.add(other.quantity),
                extraQuantity.add(other.extraQuantity),
                timing.earlier(other.timing));
    }
}
