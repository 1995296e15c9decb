package boltlore.trades.costing;

import boltlore.bill.Costs;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.measure.Percent;
import boltlore.order.Extra;
import java.math.BigDecimal;

/**
 * An extra of the order with its money, each rounded half-up to the minor unit. What the customer supplies costs and
 * sells for nothing.
 *
 * @param cost of the whole quantity
 * @param price of the whole quantity
 */
public record PricedExtra(Extra extra, BigDecimal cost, BigDecimal price) {

    static PricedExtra of(Extra extra, Catalogue catalogue, BigDecimal markUpPercent, BigDecimal coatingOfOne) {
        MinorUnit unit = new MinorUnit(catalogue.workshop().currency());
        if (extra.suppliedByCustomer()) {
            BigDecimal nothing = unit.round(BigDecimal.ZERO);
            return new PricedExtra(extra, nothing, nothing);
        }
        BigDecimal cost = unit.round(extra.quantity().multiply(costOfOne(extra, catalogue, coatingOfOne)));
        BigDecimal asked = extra.price();
        BigDecimal price =
                asked != null ? extra.quantity().multiply(asked) : cost.multiply(Percent.plus(markUpPercent));
        return new PricedExtra(extra, cost, unit.round(price));
    }

    private static BigDecimal costOfOne(Extra extra, Catalogue catalogue, BigDecimal coatingOfOne) {
        BigDecimal told = extra.cost();
        if (told != null) {
            return told;
        }
        return extra.part() == null
                ? BigDecimal.ZERO
                : rolledUp(catalogue.part(extra.part()), catalogue).add(coatingOfOne);
    }

    /** Scrap included; a bought assembly's own cost is all of it. */
    private static BigDecimal rolledUp(Part part, Catalogue catalogue) {
        BigDecimal own = Costs.toIssue(BigDecimal.ONE, part.scrapPercent()).multiply(part.cost());
        if (part.source() == Source.BUY) {
            return own;
        }
        return part.contains().stream()
                .map(child -> rolledUp(catalogue.part(child.part()), catalogue).multiply(child.quantity()))
                .reduce(own, BigDecimal::add);
    }
}
