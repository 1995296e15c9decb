package boltlore.sheets.bill;

import static boltlore.sheets.Formula.cell;
import static boltlore.sheets.Formula.product;

import boltlore.catalogue.Buying;
import boltlore.pricing.MinorUnit;
import boltlore.pricing.PricedBill;
import boltlore.pricing.Purchase;
import boltlore.sheets.Column;
import boltlore.sheets.Kind;
import boltlore.sheets.PageBuilder;
import boltlore.sheets.RowBuilder;
import boltlore.sheets.Table;
import boltlore.sheets.TableBuilder;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What is to buy, by supplier. */
final class BuyPage {

    private final PricedBill priced;
    private final OrderHead head;
    private final @Nullable LocalDate due;
    private final List<Purchase> purchases;
    private final MinorUnit coins;

    BuyPage(PricedBill priced, OrderHead head) {
        this.priced = priced;
        this.head = head;
        this.due = priced.bill().order().due();
        this.purchases = Purchase.of(priced);
        this.coins = new MinorUnit(priced.currency());
    }

    PageBuilder page() {
        PageBuilder page = head.page(PageNames.TO_BUY, "To buy")
                .note("Quantity with scrap, rounded up to whole packs and to the least order; what is left over goes to"
                        + " the stores, and what the stores hold already need not be bought. Dates are calendar days"
                        + " back from the day the kit is due.")
                .add(table())
                .frozen(2);
        ExtrasTable.add(page, priced);
        return page;
    }

    private TableBuilder table() {
        TableBuilder table = Table.named("buy").columns(columns());
        Map<String, List<Purchase>> bySupplier = purchases.stream()
                .collect(Collectors.groupingBy(Purchase::supplier, LinkedHashMap::new, Collectors.toList()));
        bySupplier.forEach((supplier, some) -> {
            table.group(supplier, says(supplier));
            some.forEach(purchase -> fill(table.row(), purchase));
            table.subtotal("To " + supplier).sum("cost", cost(some));
        });
        table.total("all", "All suppliers").sumOfSubtotals("cost", cost(purchases));
        return table;
    }

    /** Columns that would stay empty are left out. */
    private Column[] columns() {
        boolean extra = purchases.stream().anyMatch(purchase -> purchase.extra().signum() > 0);
        return Stream.of(all())
                .filter(column -> extra || !column.key().equals("extra"))
                .toArray(Column[]::new);
    }

    private Column[] all() {
        int unitCost =
                Scales.of(purchases.stream().map(purchase -> purchase.part().cost()), coins.digits(), 4);
        return new Column[] {
            Column.text("orderCode", "Order code").atMost(14),
            Column.text("part", "Part number").atMost(12),
            Column.text("revision", "Rev.").atMost(4),
            Column.text("name", "Name").atMost(40),
            Column.quantity("needed", "Needed"),
            Column.quantity("extra", "Of them extra").atMost(9),
            Column.percent("scrap", "Scrap", 1).atMost(6),
            Column.decimal("withScrap", "With scrap", 1).atMost(9),
            Column.quantity("pack", "Pack of").atMost(6),
            Column.quantity("least", "Least order").atMost(7),
            Column.quantity("ordered", "To order").atMost(8),
            Column.text("unit", "Unit").atMost(5),
            new Column("unitCost", "Unit cost", Kind.money(priced.currency(), unitCost)).atMost(10),
            Column.money("cost", "Cost", priced.currency()),
            due == null
                    ? Column.whole("orderBy", "Order before the kit is due")
                            .in("days")
                            .atMost(14)
                    : Column.date("orderBy", "Order by"),
            Column.tick("ordering", "Ordered"),
            Column.blank("stock", "From stores").atMost(10)
        };
    }

    private void fill(RowBuilder row, Purchase purchase) {
        row.put("orderCode", purchase.orderCode())
                .put("part", purchase.part().number().text())
                .put("revision", purchase.part().revision())
                .put("name", purchase.part().name().english())
                .put("needed", purchase.needed())
                .put("ordered", purchase.ordered())
                .put("unit", purchase.part().unit())
                .put("unitCost", purchase.part().cost())
                .put("cost", product(cell("ordered"), cell("unitCost")).rounded(coins.digits()), purchase.cost());
        whereTold(row, "extra", purchase.extra());
        if (purchase.part().scrapPercent().signum() > 0) {
            row.put("scrap", purchase.part().scrapPercent()).put("withScrap", purchase.withScrap());
        }
        Buying buying = purchase.part().buying();
        if (buying != null) {
            whereTold(row, "pack", buying.packOf());
            whereTold(row, "least", buying.minimumOrder());
        }
        Days.startBy(row, "orderBy", purchase.timing(), due);
    }

    private static void whereTold(RowBuilder row, String column, @Nullable BigDecimal number) {
        if (number != null && number.signum() > 0) {
            row.put(column, number);
        }
    }

    private String says(String supplier) {
        String says = priced.catalogue().workshop().suppliers().getOrDefault(supplier, "");
        return says.isEmpty() ? supplier : supplier + ": " + says;
    }

    private static BigDecimal cost(List<Purchase> some) {
        return some.stream().map(Purchase::cost).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
