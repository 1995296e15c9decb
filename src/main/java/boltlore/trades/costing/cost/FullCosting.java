package boltlore.trades.costing.cost;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import boltlore.catalogue.PriceBook;
import boltlore.order.Extra;
import boltlore.trades.coating.CoatingCost;
import boltlore.trades.coating.ExtraCoating;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.ItemCost;
import boltlore.trades.costing.MinorUnit;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;

/** Works out the full cost of a priced bill. Parts inside a bought assembly cost nothing of their own. */
public final class FullCosting {

    private final Catalogue catalogue;
    private final PartCosting parts;
    private final MinorUnit unit;

    private FullCosting(Catalogue catalogue, PriceBook prices) {
        this.catalogue = catalogue;
        this.parts = new PartCosting(catalogue, prices);
        this.unit = new MinorUnit(catalogue.workshop().currency());
    }

    /** With what coating costs in this workshop. */
    public static FullCost cost(CostedBill costed, PriceBook prices) {
        return cost(costed, prices, extra -> ExtraCoating.ofOne(extra, costed.bill(), costed.catalogue()));
    }

    /**
     * With coating of extras at other costs.
     *
     * @param coatingOfExtra what coating one of an extra costs, unrounded; left out where the order tells the extra's cost
     */
    public static FullCost cost(CostedBill costed, PriceBook prices, Function<Extra, BigDecimal> coatingOfExtra) {
        FullCosting costing = new FullCosting(costed.catalogue(), prices);
        List<CostedItem> rows = costed.rows().stream()
                .filter(row -> !row.insideBought())
                .map(costing::row)
                .toList();
        List<CostedExtra> extras = costed.bill().order().extra().stream()
                .map(extra -> new CostedExtra(extra, costing.extra(extra, coatingOfExtra)))
                .toList();
        return new FullCost(
                costed,
                prices,
                new ClearanceShares(rows, costing.unit)
                        .of(prices.landing().suppliers().values()),
                extras,
                KitTask.of(costed.bill(), costed.catalogue(), prices));
    }

    private CostedItem row(ItemCost row) {
        PartCost cost = parts.of(row.item().part(), row.item().quantity());
        Elements elements = row.coating().signum() == 0
                ? cost.elements()
                : cost.elements().with(coating(row.item().part(), row.item().finish()), row.coating());
        return new CostedItem(row, cost.work(), elements);
    }

    /** The own oven's price by area holds its labour and gas, so it carries no overhead on labour again. */
    private Element coating(Part part, String finish) {
        Finish known = catalogue.finishes().get(finish);
        return known == null || CoatingCost.coater(part, known, catalogue).isEmpty()
                ? Element.OWN_COATING
                : Element.OUTSIDE_WORK;
    }

    /** A cost that the order tells is all of it. */
    private Elements extra(Extra extra, Function<Extra, BigDecimal> coatingOfExtra) {
        BigDecimal told = extra.cost();
        if (extra.suppliedByCustomer() || (told == null && extra.part() == null)) {
            return Elements.NONE;
        }
        if (told != null || extra.part() == null) {
            BigDecimal one = told == null ? BigDecimal.ZERO : told;
            return Elements.NONE.with(
                    Element.MATERIAL, unit.round(extra.quantity().multiply(one)));
        }
        BigDecimal coating = unit.round(extra.quantity().multiply(coatingOfExtra.apply(extra)));
        return parts.whole(catalogue.part(extra.part()), extra.quantity())
                .with(coating(catalogue.part(extra.part()), extra.finish()), coating);
    }
}
