package boltlore.trades.bill.sheets;

import boltlore.report.Formula;
import boltlore.report.PageBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.costing.PricedBill;
import boltlore.trades.costing.Totals;
import boltlore.trades.costing.quote.OrderPricing;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;

/** The costed bill of materials: all levels, grouped by sub-system. */
final class BillPage {

    private static final String ROUNDING =
            "Each row is rounded half-up to the smallest coin; sums add rounded rows. Quantities hold for the"
                    + " whole kit; cost is quantity / (1 − scrap) × unit cost. An assembly's own cost stands in its"
                    + " row and its parts add theirs; what is bought has its parts in its own cost. Mass adds up"
                    + " over parts, so an assembly shows its mass for one only.";

    private final OrderPricing pricing;
    private final PricedBill priced;
    private final OrderHead head;

    BillPage(OrderPricing pricing, OrderHead head) {
        this.pricing = pricing;
        this.priced = pricing.priced();
        this.head = head;
    }

    PageBuilder page() {
        return head.page(PageNames.BILL, "Costed bill of materials")
                .add(table())
                .heading("From cost to price")
                .add(PriceBlock.worked(pricing))
                .heading("Mass")
                .add(PriceBlock.masses(priced))
                .note(ROUNDING)
                .frozen(4);
    }

    private TableBuilder table() {
        TableBuilder table = Table.named("bill");
        BillColumns.add(table, priced);
        BillRows rows = new BillRows(priced);
        Map<String, Totals> sums = priced.bySubSystem();
        priced.rowsBySubSystem().forEach((subSystem, items) -> {
            table.group(subSystem, capital(subSystem));
            items.forEach(item -> rows.fill(table.row(), item));
            subtotal(table, subSystem, items.size(), sums.getOrDefault(subSystem, Totals.NONE));
        });
        totals(table);
        return table;
    }

    private void totals(TableBuilder table) {
        Totals kit = priced.totals();
        source(table, "make", kit.made());
        source(table, "buy", kit.bought());
        table.total("kit", "Kit")
                .sumOfSubtotals("massExtended", kit.massKg())
                .sumOfSubtotals("extended", kit.own())
                .sumOfSubtotals("coating", kit.coating());
    }

    private static void subtotal(TableBuilder table, String subSystem, int rows, Totals sum) {
        table.subtotal("Sum of " + subSystem + ", " + rows + (rows == 1 ? " row" : " rows"))
                .sum("massExtended", sum.massKg())
                .sum("extended", sum.own())
                .sum("coating", sum.coating());
    }

    private static void source(TableBuilder table, String source, BigDecimal cost) {
        table.subtotal("sum-" + source, "All that the workshop will")
                .put("source", source)
                .put("extended", Formula.sumWhere("extended", "source"), cost);
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
