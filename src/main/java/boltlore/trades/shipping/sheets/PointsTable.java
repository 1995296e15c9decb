package boltlore.trades.shipping.sheets;

import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.shipping.Consignment;
import boltlore.trades.shipping.DangerousGoods;
import boltlore.trades.shipping.RoadPoints;
import boltlore.trades.shipping.UnNumber;

/** Points of all orders in the vehicle, by the road rule for small loads. */
final class PointsTable {

    private static final Column[] COLUMNS = {
        Column.text("order", "Order").atMost(20),
        Column.text("un", "UN number"),
        Column.whole("category", "Transport category"),
        Column.decimal("net", "Articles, net", 1).in("kg"),
        Column.quantity("factor", "Factor"),
        Column.decimal("points", "Points", 1),
        Column.text("remark", "Remark").atMost(30)
    };

    private PointsTable() {}

    static TableBuilder of(Consignment together) {
        TableBuilder table = Table.named("points").columns(COLUMNS);
        together.shipments()
                .forEach(shipment -> shipment.dangerous()
                        .forEach(goods -> fill(table.row(), shipment.order().name(), goods)));
        RoadPoints points = together.points();
        String relief = points.relieved() ? "up to 1000: relief applies" : "above 1000: no relief";
        table.total("total", "In the vehicle").sum("points", points.points()).put("remark", relief);
        return table;
    }

    private static void fill(RowBuilder row, String order, DangerousGoods goods) {
        row.put("order", order).put("un", goods.un()).put("net", goods.netKg());
        UnNumber entry = goods.entry().orElse(null);
        if (entry == null) {
            row.put("remark", "not known: adviser");
        } else {
            row.put("category", entry.category())
                    .put("factor", entry.pointsPerKg())
                    .put("points", RoadPoints.of(entry, goods.netKg()).points());
        }
    }
}
