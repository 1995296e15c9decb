package boltlore.trades.bill.sheets;

import boltlore.order.Extra;
import boltlore.report.Column;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.ExtraCost;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.Quotation;

/** Extras of the order, which stand outside the universal kit and its proofs. */
final class ExtrasTable {

    private ExtrasTable() {}

    /** Heading and table, or nothing where the order has no extra. */
    static void add(PageBuilder page, OrderPricing pricing) {
        if (!pricing.costed().extras().isEmpty()) {
            page.heading("Extras, outside the universal kit and what is proved of it")
                    .add(table(pricing));
        }
    }

    private static TableBuilder table(OrderPricing pricing) {
        CostedBill costed = pricing.costed();
        Quotation quotation = pricing.quotation().orElse(null);
        TableBuilder table = Table.named("extras");
        table.columns(
                Column.text("extra", "Extra").atMost(24),
                Column.quantity("quantity", "Quantity"),
                Column.text("unit", "Unit").atMost(5),
                Column.text("suppliedBy", "Supplied by").atMost(8),
                Column.money("cost", "Direct cost", costed.currency()));
        if (quotation != null) {
            table.columns(Column.money("price", "Price", quotation.currency()));
        }
        table.columns(Column.text("reason", "Reason").atMost(26));
        for (int i = 0; i < costed.extras().size(); i++) {
            RowBuilder row = table.row();
            fill(row, costed.extras().get(i), costed);
            if (quotation != null) {
                row.put("price", quotation.extras().get(i).price());
            }
        }
        RowBuilder total = table.total("extras", "Extras").sum("cost", costed.extrasCost());
        if (quotation != null) {
            total.sum("price", quotation.extrasPrice());
        }
        return table;
    }

    private static void fill(RowBuilder row, ExtraCost of, CostedBill costed) {
        Extra extra = of.extra();
        row.put("extra", says(extra, costed))
                .put("quantity", extra.quantity())
                .put("unit", extra.unit())
                .put("suppliedBy", extra.suppliedByCustomer() ? "customer" : "us")
                .put("cost", of.cost())
                .put("reason", extra.reason());
    }

    private static String says(Extra extra, CostedBill costed) {
        return extra.part() == null
                ? extra.says()
                : extra.part() + " " + costed.catalogue().part(extra.part()).name();
    }
}
