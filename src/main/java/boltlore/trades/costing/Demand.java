package boltlore.trades.costing;

import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.measure.PartNumber;
import boltlore.trades.costing.path.Timing;
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
    static SortedMap<PartNumber, Demand> of(CostedBill costed, Source source) {
        SortedMap<PartNumber, Demand> sums = new TreeMap<>();
        Stream.concat(ofKit(costed), ofExtras(costed))
                .filter(demand -> demand.part().source() == source)
                .forEach(demand -> sums.merge(demand.part().number(), demand, Demand::plus));
        return sums;
    }

    private static Stream<Demand> ofKit(CostedBill costed) {
        return costed.rows().stream()
                .filter(row -> !row.insideBought())
                .map(row -> new Demand(
                        row.item().part(), row.item().finish(), row.item().quantity(), BigDecimal.ZERO, row.timing()));
    }

    private static Stream<Demand> ofExtras(CostedBill costed) {
        return costed.times().extras().stream()
                .map(extra -> new Demand(extra.part(), "", extra.quantity(), extra.quantity(), extra.timing()));
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
