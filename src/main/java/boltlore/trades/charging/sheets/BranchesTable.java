package boltlore.trades.charging.sheets;

import boltlore.catalogue.Fuse;
import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.charging.BranchCheck;
import boltlore.trades.charging.Charging;
import org.jspecify.annotations.Nullable;

/** Each cable with its load and its fuse. */
final class BranchesTable {

    private static final Column[] COLUMNS = {
        Column.text("branch", "From – to").atMost(32),
        Column.decimal("load", "Load", 0).in("A"),
        Column.text("fuse", "Fuse").atMost(34),
        Column.decimal("fuse-amps", "Fuse", 0).in("A"),
        Column.decimal("fuse-volts", "Fuse for", 0).in("V"),
        Column.text("cable", "Cable"),
        Column.quantity("area", "Core").in("mm²"),
        Column.decimal("carries", "Carries here", 1).in("A"),
        Column.text("verdict", "Verdict").atMost(12)
    };

    private BranchesTable() {}

    static TableBuilder of(Charging charging) {
        TableBuilder table = Table.named("branches").columns(COLUMNS);
        charging.branches().forEach(check -> fill(table.row(), check));
        return table;
    }

    private static void fill(RowBuilder row, BranchCheck check) {
        row.put("branch", check.branch().says())
                .put("load", check.branch().loadAmps())
                .put("cable", check.cable().part().text())
                .put("area", check.cable().areaMm2())
                .put("carries", check.carriesAmps())
                .put("verdict", check.verdict().says());
        fuse(row, check.fuse());
    }

    private static void fuse(RowBuilder row, @Nullable Fuse fuse) {
        if (fuse != null) {
            row.put("fuse", fuse.says() + " (" + fuse.part() + ")")
                    .put("fuse-amps", fuse.amps())
                    .put("fuse-volts", fuse.volts());
        }
    }
}
