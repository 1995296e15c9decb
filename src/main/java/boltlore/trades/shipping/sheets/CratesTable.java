package boltlore.trades.shipping.sheets;

import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.shipping.Crate;
import boltlore.trades.shipping.Lift;
import boltlore.trades.shipping.Shipment;
import java.math.BigDecimal;

/** A row a crate. */
final class CratesTable {

    private static final Column[] COLUMNS = {
        Column.whole("crate", "Crate"),
        Column.text("what", "Fit stage and content").atMost(24),
        Column.text("kind", "Kind").atMost(15),
        Column.text("outside", "Outside").in("mm"),
        Column.decimal("net", "Net", 1).in("kg"),
        Column.decimal("empty", "Crate, packing", 1).in("kg"),
        Column.decimal("gross", "Gross", 1).in("kg"),
        Column.text("lift", "Lift with").atMost(12)
    };

    private CratesTable() {}

    static TableBuilder of(Shipment shipment, LoadWords words) {
        TableBuilder table = Table.named("crates").columns(COLUMNS);
        shipment.crates().forEach(crate -> fill(table.row(), crate, shipment, words));
        BigDecimal empty = shipment.grossKg().subtract(shipment.netKg());
        table.total("total", "All crates")
                .sum("net", shipment.netKg())
                .sum("empty", empty)
                .sum("gross", shipment.grossKg());
        return table;
    }

    private static void fill(RowBuilder row, Crate crate, Shipment shipment, LoadWords words) {
        row.put("crate", crate.number())
                .put("what", words.of(crate.load()))
                .put("kind", crate.type().name())
                .put("outside", LoadWords.outside(crate))
                .put("net", crate.netKg())
                .put("empty", crate.type().tareKg().add(crate.type().packingKg()))
                .put("gross", crate.grossKg())
                .put(
                        "lift",
                        LiftWords.of(
                                Lift.of(crate.grossKg(), shipment.shipping().lifting())));
    }
}
