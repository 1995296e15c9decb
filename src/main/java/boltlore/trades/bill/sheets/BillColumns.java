package boltlore.trades.bill.sheets;

import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.TableBuilder;
import boltlore.trades.costing.MinorUnit;
import boltlore.trades.costing.PricedBill;
import boltlore.trades.costing.PricedItem;

/** The columns of the costed bill. */
final class BillColumns {

    private BillColumns() {}

    static void add(TableBuilder table, PricedBill priced) {
        what(table);
        mass(table);
        cost(table, priced);
        trade(table);
    }

    private static void what(TableBuilder table) {
        table.columns(
                Column.whole("level", "Level"),
                Column.text("position", "Position").atMost(12),
                Column.text("part", "Part number").atMost(11),
                Column.text("revision", "Rev.").atMost(4),
                Column.text("finish", "Finish").atMost(8),
                Column.text("name", "Name").atMost(20),
                Column.quantity("quantity", "Qty"),
                Column.text("unit", "Unit").atMost(5),
                Column.text("source", "Make, buy").atMost(5));
    }

    private static void mass(TableBuilder table) {
        table.columns(
                Column.decimal("massEach", "Mass each", 3).in("kg"),
                Column.decimal("massExtended", "Mass", 2).in("kg"));
    }

    private static void cost(TableBuilder table, PricedBill priced) {
        int coins = new MinorUnit(priced.currency()).digits();
        int unitCost = Scales.of(priced.rows().stream().map(PricedItem::unitCost), coins, 4);
        table.columns(
                new Column("unitCost", "Unit cost", Kind.money(priced.currency(), unitCost)),
                Column.percent("scrap", "Scrap", 1),
                Column.money("extended", "Cost", priced.currency()),
                Column.money("coating", "Coating", priced.currency()));
    }

    private static void trade(TableBuilder table) {
        table.columns(
                Column.whole("leadDays", "Lead days"),
                Column.text("hs", "HS code").atMost(8),
                Column.text("origin", "From").atMost(5),
                Column.text("tracked", "Track by").atMost(6),
                Column.text("calledBy", "Called for by").atMost(34));
    }
}
