package boltlore.trades.charging.sheets;

import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.charging.AcCharging;
import boltlore.trades.charging.CableCode;
import boltlore.trades.charging.Charging;
import boltlore.trades.charging.DcCharging;
import boltlore.trades.charging.Power;
import org.jspecify.annotations.Nullable;

/** Where it can be charged, a row for each supply and cable. */
final class WaysTable {

    private static final Column[] COLUMNS = {
        Column.text("where", "Where").atMost(14),
        Column.whole("supply", "Supply").in("A"),
        Column.text("cable", "Cable code").atMost(12),
        Column.whole("phases", "Phases in use"),
        Column.decimal("volts", "Each phase", 0).in("V"),
        Column.decimal("amps", "Current", 1).in("A"),
        Column.decimal("kilowatts", "Power", 1).in("kW"),
        Column.decimal("hours", "20–80 %", 1).in("h"),
        Column.text("limits", "What limits it").atMost(44)
    };

    private WaysTable() {}

    static TableBuilder of(Charging charging) {
        TableBuilder table = Table.named("ways").columns(COLUMNS);
        charging.ac().forEach(way -> fill(table.row(), way));
        DcCharging dc = charging.dc();
        if (dc != null) {
            table.row()
                    .put("where", "DC post")
                    .put("cable", "of the post")
                    .put("amps", dc.amps())
                    .put("kilowatts", dc.kilowatts())
                    .put("hours", dc.hours())
                    .put("limits", dc.limits());
        }
        return table;
    }

    private static void fill(RowBuilder row, AcCharging way) {
        row.put("where", way.mains().says())
                .put("supply", way.mains().amps())
                .put("cable", cable(way.cable(), way.mains().phases()))
                .put("volts", way.mains().volts())
                .put("kilowatts", way.kilowatts())
                .put("hours", way.hours())
                .put("limits", way.chain().whatLimits());
        way.chain().power().ifPresent(power -> put(row, power));
    }

    private static void put(RowBuilder row, Power power) {
        row.put("phases", power.phases()).put("amps", power.amps());
    }

    private static String cable(@Nullable CableCode code, int phases) {
        return code == null ? "of the post" : code.amps(phases) + " A";
    }
}
