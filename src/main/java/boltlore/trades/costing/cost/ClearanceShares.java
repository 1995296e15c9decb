package boltlore.trades.costing.cost;

import boltlore.catalogue.Delivery;
import boltlore.trades.costing.MinorUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Shares what clearing a supplier's consignment costs over the kits that it serves, and in a kit over its goods by price. */
public final class ClearanceShares {

    private final MinorUnit unit;
    private final List<CostedItem> rows;

    ClearanceShares(List<CostedItem> rows, MinorUnit unit) {
        this.unit = unit;
        this.rows = new ArrayList<>(rows);
    }

    List<CostedItem> of(Iterable<Delivery> deliveries) {
        deliveries.forEach(this::add);
        return List.copyOf(rows);
    }

    private void add(Delivery delivery) {
        List<Integer> places = IntStream.range(0, rows.size())
                .filter(place -> PartCosting.supplier(rows.get(place).part()).equals(delivery.supplier()))
                .boxed()
                .toList();
        List<BigDecimal> shares = shares(
                ofOneKit(delivery, unit),
                places.stream().map(place -> price(rows.get(place))).toList(),
                unit);
        for (int i = 0; i < places.size(); i++) {
            rows.set(places.get(i), rows.get(places.get(i)).plus(Elements.NONE.with(Element.CLEARANCE, shares.get(i))));
        }
    }

    /**
     * One share for each weight. Shares are differences of rounded running sums, so that they add up to the amount and none
     * is more than one minor unit off.
     *
     * @param weights 0 or more; where all are 0 the first bears all
     */
    static List<BigDecimal> shares(BigDecimal amount, List<BigDecimal> weights, MinorUnit unit) {
        BigDecimal all = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        List<BigDecimal> shares = new ArrayList<>();
        BigDecimal running = BigDecimal.ZERO;
        BigDecimal given = BigDecimal.ZERO;
        for (BigDecimal weight : weights) {
            running = running.add(weight);
            BigDecimal upToHere = all.signum() == 0
                    ? amount
                    : unit.round(amount.multiply(running).divide(all, MathContext.DECIMAL128));
            shares.add(upToHere.subtract(given));
            given = upToHere;
        }
        return shares;
    }

    /** What each of the kits bears that a consignment of the supplier serves, rounded half-up to the minor unit. */
    public static BigDecimal ofOneKit(Delivery delivery, MinorUnit unit) {
        return unit.round(delivery.clearance().divide(BigDecimal.valueOf(delivery.kits()), MathContext.DECIMAL128));
    }

    private static BigDecimal price(CostedItem row) {
        return row.elements().of(Element.MATERIAL).add(row.elements().of(Element.SCRAP));
    }
}
