package boltlore.trades.fixings.sheets;

import boltlore.catalogue.Fixing;
import boltlore.catalogue.Workshop;
import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.fixings.BoltedJoint;
import boltlore.trades.fixings.KitFixings;

/** Each joint with its bolts, what comes with them, and the torque with all it stands for. */
final class JointsTable {

    private static final Column[] COLUMNS = {
        Column.text("joint", "Joint").atMost(26),
        Column.text("held", "What is bolted").atMost(34),
        Column.text("because", "To what, and how many").atMost(38),
        Column.quantity("quantity", "Bolts"),
        Column.text("size", "Size, class").atMost(16),
        Column.text("with", "With").atMost(30),
        Column.decimal("torque", "Torque", 1).in("Nm"),
        Column.text("stands", "Table; friction").atMost(30),
        Column.text("lock", "Thread lock").atMost(26)
    };

    private JointsTable() {}

    static TableBuilder of(KitFixings fixings, Workshop workshop) {
        TableBuilder table = Table.named("joints").columns(COLUMNS);
        String stage = "";
        for (BoltedJoint joint : fixings.joints()) {
            if (!joint.position().stage().equals(stage)) {
                stage = joint.position().stage();
                table.group(stage, workshop.stageSays(stage, "en"));
            }
            fill(table.row(), joint);
        }
        return table;
    }

    private static void fill(RowBuilder row, BoltedJoint joint) {
        row.put("joint", joint.says())
                .put("held", joint.held())
                .put("because", joint.because())
                .put("quantity", joint.quantity())
                .put("with", JointWords.with(joint));
        bolt(row, joint.fixing());
    }

    private static void bolt(RowBuilder row, Fixing fixing) {
        row.put("size", JointWords.bolt(fixing));
        TorqueCells.put(row, fixing);
        if (fixing.threadLock() != null) {
            row.put("lock", fixing.threadLock());
        }
    }
}
