package boltlore.trades.costing.sheets;

import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.costing.cost.Bridge;
import boltlore.trades.costing.cost.FullCost;
import java.math.BigDecimal;

/** From the direct cost on the costed bill to the full cost of the same kit. */
final class BridgeTable {

    private BridgeTable() {}

    static TableBuilder of(FullCost cost) {
        Bridge bridge = Bridge.of(cost);
        TableBuilder table = Table.named("bridge")
                .columns(
                        Column.text("what", "What").atMost(70),
                        Column.money("amount", "Amount", cost.priced().currency()));
        row(table, "Direct cost, as on the costed bill", bridge.direct());
        row(
                table,
                "Labour that the part master's costs of made parts hold",
                bridge.held().negate());
        row(table, "Labour, set-up and outside operations at their own rates", bridge.work());
        row(table, "Freight, duty and clearance", bridge.delivery());
        row(table, "Overhead", bridge.overhead());
        table.total("total", "Full cost of the kit").sum("amount", bridge.full());
        return table;
    }

    private static void row(TableBuilder table, String what, BigDecimal amount) {
        table.row().put("what", what).put("amount", amount);
    }
}
