package boltlore.trades.bill.sheets;

import static boltlore.report.Formula.cell;
import static boltlore.report.Formula.product;

import boltlore.catalogue.Buying;
import boltlore.catalogue.Part;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.RowBuilder;
import boltlore.report.TableBuilder;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.MinorUnit;
import boltlore.trades.costing.Purchase;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Columns and rows of what is to buy. */
final class BuyRows {

    private final List<Purchase> purchases;
    private final Currency currency;
    private final int coins;
    private final @Nullable LocalDate due;

    BuyRows(List<Purchase> purchases, CostedBill costed) {
        this.purchases = purchases;
        this.currency = costed.currency();
        this.coins = new MinorUnit(currency).digits();
        this.due = costed.bill().order().due();
    }

    void columns(TableBuilder table) {
        table.columns(
                Column.text("supplierPart", "Supplier part no.").atMost(14),
                Column.text("part", "Part number").atMost(12),
                Column.text("revision", "Rev.").atMost(4),
                Column.text("name", "Name").atMost(40));
        quantities(table);
        table.columns(
                new Column("unitCost", "Unit cost", Kind.money(currency, unitCostDigits())),
                Column.money("cost", "Cost", currency),
                Days.column("orderBy", "Order by", "Order", due),
                Column.tick("ordering", "Ordered"),
                Column.blank("fromStock", "From stock").atMost(10));
    }

    private void quantities(TableBuilder table) {
        table.columns(Column.quantity("needed", "Needed"));
        if (purchases.stream().anyMatch(purchase -> purchase.extra().signum() > 0)) {
            table.columns(Column.quantity("extra", "Of them extra"));
        }
        table.columns(
                Column.percent("scrap", "Scrap", 1),
                Column.decimal("withScrap", "With scrap", 2),
                Column.quantity("pack", "Pack of"),
                Column.quantity("minimumOrder", "MOQ"),
                Column.quantity("ordered", "To order"),
                Column.text("unit", "Unit").atMost(5));
    }

    private int unitCostDigits() {
        return Scales.fit(purchases.stream().map(Purchase::part).map(Part::cost), coins, 4);
    }

    void fill(RowBuilder row, Purchase purchase) {
        Part part = purchase.part();
        row.put("supplierPart", purchase.orderCode())
                .put("part", part.number().text())
                .put("revision", part.revision())
                .put("name", part.name().english())
                .put("needed", purchase.needed())
                .put("ordered", purchase.ordered())
                .put("unit", part.unit())
                .put("unitCost", part.cost())
                .put("cost", product(cell("ordered"), cell("unitCost")).rounded(coins), purchase.cost());
        whereTold(row, purchase);
        Days.startBy(row, "orderBy", purchase.timing(), due);
    }

    private static void whereTold(RowBuilder row, Purchase purchase) {
        whereTold(row, "extra", purchase.extra());
        if (purchase.part().scrapPercent().signum() > 0) {
            row.put("scrap", purchase.part().scrapPercent()).put("withScrap", purchase.withScrap());
        }
        Buying buying = purchase.part().buying();
        if (buying != null) {
            whereTold(row, "pack", buying.packOf());
            whereTold(row, "minimumOrder", buying.minimumOrder());
        }
    }

    private static void whereTold(RowBuilder row, String column, @Nullable BigDecimal number) {
        if (number != null && number.signum() > 0) {
            row.put(column, number);
        }
    }
}
