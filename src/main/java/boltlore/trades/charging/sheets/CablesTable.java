package boltlore.trades.charging.sheets;

import boltlore.catalogue.Branch;
import boltlore.catalogue.PowerCable;
import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.charging.BranchCheck;
import boltlore.trades.charging.Charging;
import java.util.stream.Collectors;

/** What is assumed of each cable, and where it is derated. */
final class CablesTable {

    private static final Column[] COLUMNS = {
        Column.text("cable", "Cable"),
        Column.decimal("amps", "Carries", 0).in("A"),
        Column.decimal("volts", "For", 0).in("V"),
        Column.text("assumed", "As assumed").atMost(70)
    };

    private CablesTable() {}

    static TableBuilder of(Charging charging) {
        TableBuilder table = Table.named("cables").columns(COLUMNS);
        charging.branches().stream().map(BranchCheck::cable).distinct().forEach(cable -> fill(table, cable, charging));
        return table;
    }

    private static void fill(TableBuilder table, PowerCable cable, Charging charging) {
        String derated = charging.branches().stream()
                .filter(check -> check.cable().equals(cable))
                .map(check -> derated(check.branch()))
                .collect(Collectors.joining());
        table.row()
                .put("cable", cable.part().text())
                .put("amps", cable.amps())
                .put("volts", cable.volts())
                .put("assumed", cable.assumed() + derated);
    }

    private static String derated(Branch branch) {
        return branch.because().isEmpty()
                ? ""
                : "; " + branch.says() + " × " + branch.derating().toPlainString() + ": " + dotless(branch.because());
    }

    private static String dotless(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }
}
