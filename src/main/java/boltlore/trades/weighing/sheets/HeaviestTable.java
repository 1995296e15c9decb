package boltlore.trades.weighing.sheets;

import boltlore.catalogue.Station;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.weighing.Added;
import boltlore.trades.weighing.AxleLoads;
import boltlore.trades.weighing.Heaviest;
import boltlore.trades.weighing.Weighing;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What of the kit weighs most, and the rest in one row. */
final class HeaviestTable {

    private static final int ROWS = 15;

    private static final Column[] COLUMNS = {
        Column.text("part", "Part"),
        Column.text("what", "What").atMost(40),
        Column.quantity("quantity", "Quantity"),
        Column.whole("station", "Behind front axle").in("mm"),
        Column.text("from", "Station").atMost(14),
        Column.decimal("mass", "Mass", 1).in("kg"),
        Column.decimal("front", "Front axle", 1).in("kg"),
        Column.decimal("rear", "Rear axle", 1).in("kg")
    };

    private HeaviestTable() {}

    static TableBuilder of(Weighing weighing, int wheelbaseMm) {
        TableBuilder table = Table.named("heaviest").columns(COLUMNS);
        List<Added> heaviest = Heaviest.of(weighing, ROWS);
        heaviest.forEach(each -> fill(table.row(), each, wheelbaseMm));
        AxleLoads shown = sum(heaviest, wheelbaseMm);
        AxleLoads all = sum(weighing.added(), wheelbaseMm);
        loads(table.row(), all.minus(shown))
                .put("what", "All else of the kit, " + (weighing.added().size() - heaviest.size()) + " items");
        table.total("total", "The whole kit")
                .sum("mass", all.totalKg())
                .sum("front", all.frontKg())
                .sum("rear", all.rearKg());
        return table;
    }

    private static void fill(RowBuilder row, Added added, int wheelbaseMm) {
        loads(row, added.on(wheelbaseMm))
                .put("part", added.item().part().number().text())
                .put("what", added.item().part().name().english())
                .put("quantity", added.item().quantity())
                .put("station", station(added.at()))
                .put("from", added.measured() ? "its own" : "sub-system's");
    }

    private static Cell station(@Nullable Station at) {
        return at == null ? Cell.EMPTY : Cell.of(BigDecimal.valueOf(at.behindFrontMm()));
    }

    private static RowBuilder loads(RowBuilder row, AxleLoads loads) {
        return row.put("mass", loads.totalKg()).put("front", loads.frontKg()).put("rear", loads.rearKg());
    }

    private static AxleLoads sum(List<Added> added, int wheelbaseMm) {
        return added.stream().map(each -> each.on(wheelbaseMm)).reduce(AxleLoads.NONE, AxleLoads::plus);
    }
}
