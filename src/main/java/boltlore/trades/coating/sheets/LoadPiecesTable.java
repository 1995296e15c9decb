package boltlore.trades.coating.sheets;

import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.coating.BatchRow;
import boltlore.trades.coating.CureQueue;
import boltlore.trades.coating.OvenLoad;
import boltlore.trades.coating.PowderRun;

/** Which piece hangs in which load of a run. */
final class LoadPiecesTable {

    private static final Column[] COLUMNS = {
        Column.text("load", "Load"),
        Column.text("part", "Part"),
        Column.text("name", "Name").atMost(36),
        Column.text("pass", "Of"),
        Column.text("marks", "Order and piece marks").atMost(30),
        Column.text("section", "Section thin–thick").in("mm").atMost(10),
        Column.whole("pieces", "Pieces"),
        Column.tick("hung", "Hung")
    };

    private LoadPiecesTable() {}

    static TableBuilder of(PowderRun run) {
        TableBuilder table = Table.named("load-pieces").columns(COLUMNS);
        run.queues().forEach(queue -> queue.loads().forEach(load -> rows(table, load, queue)));
        return table;
    }

    private static void rows(TableBuilder table, OvenLoad load, CureQueue queue) {
        String pieces = CoatWords.count(load.pieces(), "piece", "pieces");
        table.group("load-" + load.number(), "Load " + load.number() + ", " + pieces);
        for (BatchRow row : load.rows()) {
            PieceCells.counted(table.row(), row)
                    .put("load", String.valueOf(load.number()))
                    .put("pass", PowderRunsTable.pass(queue.passOf(row)))
                    .put("section", CoatWords.section(row));
        }
    }
}
