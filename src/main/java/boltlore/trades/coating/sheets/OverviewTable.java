package boltlore.trades.coating.sheets;

import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.coating.CoatPlan;
import boltlore.trades.coating.OvenBatch;
import boltlore.trades.coating.SendOut;
import java.math.BigDecimal;

/** All batches and send-outs, a row each. */
final class OverviewTable {

    private static final Column[] COLUMNS = {
        Column.text("what", "Batch or send-out"),
        Column.text("finish", "Finish").atMost(28),
        Column.text("where", "Where").atMost(26),
        Column.text("powder", "Powder").atMost(24),
        Column.text("cure", "Cure window").atMost(22),
        Column.text("out", "Out by"),
        Column.text("need", "In store by"),
        Column.whole("pieces", "Pieces"),
        Column.decimal("area", "Area", 3).in("m²"),
        Column.tick("done", "Done")
    };

    private OverviewTable() {}

    static TableBuilder of(CoatPlan plan) {
        TableBuilder table = Table.named("batches").columns(COLUMNS);
        plan.batches().forEach(batch -> own(table.row(), batch));
        plan.sendOuts().forEach(sendOut -> outside(table.row(), sendOut));
        totals(table.total("total", "Total"), plan);
        return table;
    }

    private static void own(RowBuilder cells, OvenBatch batch) {
        cells.put("what", "Batch " + batch.number())
                .put("finish", batch.finish().says().english())
                .put("where", batch.oven().says())
                .put("powder", CoatWords.powders(batch.finish()))
                .put("cure", CoatWords.cures(batch.finish()))
                .put("pieces", batch.pieces())
                .put("area", batch.areaM2())
                .put("need", CoatWords.day(batch.needBy()));
    }

    private static void outside(RowBuilder cells, SendOut sendOut) {
        cells.put("what", "Send-out " + sendOut.number() + (sendOut.tooBig().isEmpty() ? "" : ", too large for us"))
                .put("finish", sendOut.finish().says().english())
                .put("where", sendOut.coater().name())
                .put("pieces", sendOut.pieces())
                .put("area", sendOut.areaM2())
                .put("out", CoatWords.day(sendOut.outBy()))
                .put("need", CoatWords.day(sendOut.backBy()));
    }

    private static void totals(RowBuilder total, CoatPlan plan) {
        int own = plan.batches().stream().mapToInt(OvenBatch::pieces).sum();
        int out = plan.sendOuts().stream().mapToInt(SendOut::pieces).sum();
        BigDecimal ownM2 = plan.batches().stream().map(OvenBatch::areaM2).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal outM2 = plan.sendOuts().stream().map(SendOut::areaM2).reduce(BigDecimal.ZERO, BigDecimal::add);
        total.sum("pieces", BigDecimal.valueOf(own + (long) out)).sum("area", ownM2.add(outM2));
    }
}
