package boltlore.sheets.bill;

import boltlore.pricing.PricedBill;
import boltlore.pricing.PricedItem;
import boltlore.pricing.Totals;
import boltlore.sheets.Formula;
import boltlore.sheets.PageBuilder;
import boltlore.sheets.Table;
import boltlore.sheets.TableBuilder;
import java.util.List;
import java.util.Locale;

/** The costed bill of materials: all levels, grouped by sub-system. */
final class BillPage {

    private final PricedBill priced;
    private final OrderHead head;

    BillPage(PricedBill priced, OrderHead head) {
        this.priced = priced;
        this.head = head;
    }

    PageBuilder page() {
        return head.page(PageNames.BILL, "Costed bill of materials")
                .add(table())
                .heading("From cost to price")
                .add(PriceBlock.worked(priced))
                .heading("Mass")
                .add(PriceBlock.masses(priced))
                .note("Each row is rounded half-up to the smallest coin; sums add rounded rows. Quantities hold for the"
                        + " whole kit; cost is quantity / (1 − scrap) × unit cost. An assembly's own cost stands in its"
                        + " row and its parts add theirs; what is bought has its parts in its own cost. Mass adds up"
                        + " over parts, so an assembly shows its mass for one only.")
                .frozen(4);
    }

    private TableBuilder table() {
        TableBuilder table = Table.named("bill").columns(BillColumns.of(priced));
        BillRows rows = new BillRows(priced);
        priced.rowsBySubSystem().forEach((subSystem, items) -> {
            table.group(subSystem, capital(subSystem));
            items.forEach(item -> rows.fill(table.row(), item));
            subtotal(table, subSystem, items);
        });
        source(table, "make", "All that the workshop will", priced);
        source(table, "buy", "All that the workshop will", priced);
        Totals kit = priced.totals();
        table.total("kit", "Kit")
                .sumOfSubtotals("massExtended", kit.massKg())
                .sumOfSubtotals("extended", kit.own())
                .sumOfSubtotals("coating", kit.coating());
        return table;
    }

    private void subtotal(TableBuilder table, String subSystem, List<PricedItem> items) {
        Totals sum = priced.bySubSystem().getOrDefault(subSystem, Totals.NONE);
        table.subtotal("Sum of " + subSystem + ", " + items.size() + (items.size() == 1 ? " row" : " rows"))
                .sum("massExtended", sum.massKg())
                .sum("extended", sum.own())
                .sum("coating", sum.coating());
    }

    private static void source(TableBuilder table, String source, String words, PricedBill priced) {
        Totals kit = priced.totals();
        table.subtotal("sum-" + source, words)
                .put("source", source)
                .put(
                        "extended",
                        Formula.sumWhere("extended", "source"),
                        source.equals("make") ? kit.made() : kit.bought());
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
