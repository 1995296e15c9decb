package boltlore.trades.bill.sheets;

import boltlore.report.PageBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.Purchase;
import boltlore.trades.costing.quote.OrderPricing;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What is to buy, by supplier. */
final class BuyPage {

    private final OrderPricing pricing;
    private final CostedBill costed;
    private final OrderHead head;
    private final List<Purchase> purchases;

    BuyPage(OrderPricing pricing, OrderHead head) {
        this.pricing = pricing;
        this.costed = pricing.costed();
        this.head = head;
        this.purchases = Purchase.of(costed);
    }

    PageBuilder page() {
        PageBuilder page = head.page(PageNames.TO_BUY, "To buy")
                .note(
                        "Quantity with scrap, rounded up to whole packs and to the minimum order quantity (MOQ); what is left over goes to"
                                + " the stores, and what the stores hold already need not be bought. Dates are calendar days"
                                + " back from the day the kit is due.")
                .add(table())
                .frozen(2);
        ExtrasTable.add(page, pricing);
        return page;
    }

    private TableBuilder table() {
        TableBuilder table = Table.named("buy");
        BuyRows rows = new BuyRows(purchases, costed);
        rows.columns(table);
        Map<String, List<Purchase>> bySupplier = purchases.stream()
                .collect(Collectors.groupingBy(Purchase::supplier, LinkedHashMap::new, Collectors.toList()));
        bySupplier.forEach((supplier, some) -> {
            table.group(supplier, says(supplier));
            some.forEach(purchase -> rows.fill(table.row(), purchase));
            table.subtotal("To " + supplier).sum("cost", cost(some));
        });
        table.total("all", "All suppliers").sumOfSubtotals("cost", cost(purchases));
        return table;
    }

    private String says(String supplier) {
        String says = costed.catalogue().workshop().suppliers().getOrDefault(supplier, "");
        return says.isEmpty() ? supplier : supplier + ": " + says;
    }

    private static BigDecimal cost(List<Purchase> some) {
        return some.stream().map(Purchase::cost).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
