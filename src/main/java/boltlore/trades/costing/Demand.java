package boltlore.trades.costing;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * How many of a part the kit and the extras together ask for.
 *
 * @param quantity needed, scrap not yet added, in the part's unit
 * @param extraQuantity how many of them are extras
 * @param timing of the earliest place
 */
record Demand(Part part, String finish, BigDecimal quantity, BigDecimal extraQuantity, Timing timing) {

    /** Of all parts that are bought or made as such, by part number; nothing inside what is bought. */
    static SortedMap<PartNumber, Demand> of(PricedBill priced, Source source) {
        SortedMap<PartNumber, Demand> sums = new TreeMap<>();
        Stream.concat(ofKit(priced), ofExtras(priced))
                .filter(demand -> demand.part().source() == source)
                .forEach(demand -> sums.merge(demand.part().number(), demand, Demand::plus));
        return sums;
    }

    private static Stream<Demand> ofKit(PricedBill priced) {
        return priced.rows().stream()
                .filter(row -> !row.insideBought())
                .map(row -> new Demand(
                        row.item().part(), row.item().finish(), row.item().quantity(), BigDecimal.ZERO, row.timing()));
    }

    private static Stream<Demand> ofExtras(PricedBill priced) {
        Catalogue catalogue = priced.catalogue();
        LeadTimes leadTimes = new LeadTimes(catalogue);
        return priced.bill().order().extra().stream()
                .filter(extra -> !extra.suppliedByCustomer())
                .flatMap(extra -> Stream.ofNullable(extra.part())
                        .map(catalogue::part)
                        .flatMap(part ->
                                ofExtra(part, extra.quantity(), leadTimes.ofKitPart(part, ""), leadTimes, catalogue)));
    }

    private static Stream<Demand> ofExtra(
            Part part, BigDecimal quantity, Timing timing, LeadTimes leadTimes, Catalogue catalogue) {
        Stream<Demand> own = Stream.of(new Demand(part, "", quantity, quantity, timing));
        if (part.source() == Source.BUY) {
            return own;
        }
        return Stream.concat(own, part.contains().stream().flatMap(child -> {
            Part inside = catalogue.part(child.part());
            Timing earlier = leadTimes.ofChild(inside, "", timing);
            return ofExtra(inside, quantity.multiply(child.quantity()), earlier, leadTimes, catalogue);
        }));
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
