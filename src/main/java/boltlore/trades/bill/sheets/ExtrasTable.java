package boltlore.trades.bill.sheets;

import boltlore.order.Extra;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.ExtraCost;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.Quotation;
import java.util.List;
import java.util.stream.IntStream;

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
        List<ExtraCost> extras = costed.extras();
        Quotation quotation = pricing.quotation().orElse(null);
        TableSpec<Integer> spec = TableSpec.<Integer>named("extras")
                .column(
                        Column.text("extra", "Extra").atMost(24),
                        i -> says(extras.get(i).extra(), costed))
                .quantity("quantity", "Quantity", "", i -> extras.get(i).extra().quantity())
                .text("unit", "Unit", 5, i -> extras.get(i).extra().unit())
                .text(
                        "suppliedBy",
                        "Supplied by",
                        8,
                        i -> extras.get(i).extra().suppliedByCustomer() ? "customer" : "us")
                .money(
                        "cost",
                        "Direct cost",
                        costed.currency(),
                        i -> extras.get(i).cost());
        if (quotation != null) {
            spec.money(
                    "price",
                    "Price",
                    quotation.currency(),
                    i -> quotation.extras().get(i).price());
        }
        spec.text("reason", "Reason", 26, i -> extras.get(i).extra().reason());
        TableBuilder table = spec.of(IntStream.range(0, extras.size()).boxed().toList());
        RowBuilder total = table.total("extras", "Extras").sum("cost", costed.extrasCost());
        if (quotation != null) {
            total.sum("price", quotation.extrasPrice());
        }
        return table;
    }

    private static Cell says(Extra extra, CostedBill costed) {
        return extra.part() == null
                ? Cell.of(extra.says())
                : Cell.of(costed.catalogue().part(extra.part()).name(), extra.part() + " {0}");
    }
}
