package boltlore.trades.weighing.sheets;

import boltlore.catalogue.Chassis;
import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.weighing.OnAxles;
import boltlore.trades.weighing.Stand;
import boltlore.trades.weighing.Standing;
import java.math.BigDecimal;

/** Axle loads before and after, empty and loaded, each with what its limit leaves. */
final class StandingsTable {

    private static final Column[] COLUMNS = {
        Column.text("stand", "How it stands").atMost(40),
        kg("front", "Front axle"),
        kg("front-left", "left to limit"),
        kg("rear", "Rear axle"),
        kg("rear-left", "left to limit"),
        kg("whole", "Whole vehicle"),
        kg("whole-left", "left to limit"),
        Column.percent("share", "In front", 1),
        Column.text("remark", "Remark").atMost(24)
    };

    private StandingsTable() {}

    private static Column kg(String key, String heading) {
        return Column.decimal(key, heading, 1).in("kg");
    }

    static TableBuilder of(OnAxles onAxles) {
        TableBuilder table = Table.named("axle-loads").columns(COLUMNS);
        Chassis chassis = onAxles.chassis();
        onAxles.standings().forEach(standing -> fill(table.row(), standing, chassis));
        table.total("limits", "Limits")
                .put("front", chassis.frontLimitKg())
                .put("rear", chassis.rearLimitKg())
                .put("whole", chassis.grossKg());
        return table;
    }

    private static void fill(RowBuilder row, Standing standing, Chassis chassis) {
        BigDecimal front = chassis.frontLimitKg().subtract(standing.loads().frontKg());
        BigDecimal rear = chassis.rearLimitKg().subtract(standing.loads().rearKg());
        BigDecimal whole = chassis.grossKg().subtract(standing.loads().totalKg());
        row.put("stand", standing.stand().says())
                .put("front", standing.loads().frontKg())
                .put("front-left", front)
                .put("rear", standing.loads().rearKg())
                .put("rear-left", rear)
                .put("whole", standing.loads().totalKg())
                .put("whole-left", whole)
                .put("share", standing.loads().frontPercent())
                .put("remark", remark(standing, front.min(rear).min(whole)));
    }

    private static String remark(Standing standing, BigDecimal leastLeft) {
        if (leastLeft.signum() < 0) {
            return "above a limit";
        }
        return standing.stand() == Stand.DONOR ? "as weighed" : "";
    }
}
