package boltlore.trades.shipping;

import boltlore.bill.Item;
import boltlore.measure.PartNumber;
import boltlore.trades.costing.CostedBill;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;

/**
 * What pieces cost as they are picked, only to share out a price: with all that is in them, coating and scrap. What an
 * assembly that is not picked whole adds itself is left to all in proportion.
 */
final class PieceCosts {

    private record Piece(PartNumber part, String finish) {}

    private record Sum(BigDecimal cost, BigDecimal quantity) {

        Sum plus(Sum other) {
            return new Sum(cost.add(other.cost), quantity.add(other.quantity));
        }
    }

    private final Map<Piece, Sum> sums = new HashMap<>();

    static PieceCosts of(CostedBill costed) {
        IdentityHashMap<Item, BigDecimal> own = new IdentityHashMap<>();
        costed.rows().forEach(row -> own.put(row.item(), row.total()));
        PieceCosts costs = new PieceCosts();
        costed.bill().picked().forEach(item -> costs.add(item, whole(item, own)));
        return costs;
    }

    private void add(Item item, BigDecimal cost) {
        sums.merge(new Piece(item.part().number(), item.finish()), new Sum(cost, item.quantity()), Sum::plus);
    }

    private static BigDecimal whole(Item item, IdentityHashMap<Item, BigDecimal> own) {
        return item.all().map(each -> own.getOrDefault(each, BigDecimal.ZERO)).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Of the goods' quantity, spares left out; nothing for what is not of the kit. */
    BigDecimal of(Goods goods) {
        Sum sum = goods.part() == null ? null : sums.get(new Piece(goods.part().number(), goods.finish()));
        return sum == null || sum.quantity().signum() == 0
                ? BigDecimal.ZERO
                : sum.cost().multiply(goods.quantity()).divide(sum.quantity(), MathContext.DECIMAL128);
    }
}
