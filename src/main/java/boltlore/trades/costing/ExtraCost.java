package boltlore.trades.costing;

import boltlore.bill.Costs;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.order.Extra;
import java.math.BigDecimal;

/**
 * An extra of the order with its direct cost, rounded half-up to the minor unit. What the customer supplies costs nothing.
 *
 * @param cost of the whole quantity
 */
public record ExtraCost(Extra extra, BigDecimal cost) {

    static ExtraCost of(Extra extra, Catalogue catalogue, BigDecimal coatingOfOne) {
        MinorUnit unit = new MinorUnit(catalogue.workshop().currency());
        BigDecimal one = extra.suppliedByCustomer() ? BigDecimal.ZERO : costOfOne(extra, catalogue, coatingOfOne);
        return new ExtraCost(extra, unit.round(extra.quantity().multiply(one)));
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
