package boltlore.trades.fixings.sheets;

import boltlore.catalogue.Fixing;
import boltlore.catalogue.JointFacts;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.fixings.BoltedJoint;
import boltlore.trades.fixings.KitFixings;
import boltlore.trades.fixings.Tightening;
import java.math.BigDecimal;

/** Safety joints: each is torqued with a tool that has a number, ticked and signed for. */
final class SafetyPage {

    private static final Column[] COLUMNS = {
        Column.text("joint", "Joint").atMost(28),
        Column.quantity("quantity", "Bolts"),
        Column.text("size", "Size, class"),
        Column.decimal("torque", "Torque", 1).in("Nm"),
        Column.text("stands", "Table, friction").atMost(44),
        Column.decimal("preload", "Preload", 1).in("kN"),
        Column.decimal("least", "at least", 1).in("kN"),
        Column.decimal("clamp", "Clamped", 0).in("mm"),
        Column.text("into", "Into"),
        Column.tick("torqued", "Torqued"),
        Column.blank("tool", "Tool number"),
        Column.signature("signed", "Signature, date")
    };

    private static final int KILO = 3;

    private static final String PRELOAD =
            "Preload at that torque and friction after VDI 2230; at least: divided by 1.8, the"
                    + " scatter of a torque wrench.";

    private SafetyPage() {}

    static PageBuilder of(KitFixings fixings, String footer) {
        PageBuilder page = Page.named("Signed joints").landscape().footer(footer);
        page.title("Joints to sign for").add(table(fixings)).note(PRELOAD);
        FixingCautions.safety(page);
        return page.signatures("Checked by a second person");
    }

    private static TableBuilder table(KitFixings fixings) {
        TableBuilder table = Table.named("signed-joints").columns(COLUMNS);
        fixings.joints().stream().filter(BoltedJoint::safety).forEach(joint -> fill(table.row(), joint));
        return table;
    }

    private static void fill(RowBuilder row, BoltedJoint joint) {
        Fixing fixing = joint.fixing();
        row.put("joint", joint.says()).put("quantity", joint.quantity()).put("size", JointWords.bolt(fixing));
        TorqueCells.put(row, fixing);
        joint.preloadNewton().ifPresent(preload -> preload(row, preload));
        JointFacts facts = joint.facts();
        if (facts != null) {
            facts(row, facts);
        }
    }

    private static void preload(RowBuilder row, BigDecimal newton) {
        row.put("preload", newton.movePointLeft(KILO))
                .put("least", Tightening.afterScatter(newton, Tightening.WRENCH).movePointLeft(KILO));
    }

    private static void facts(RowBuilder row, JointFacts facts) {
        if (facts.clampMm() != null) {
            row.put("clamp", facts.clampMm());
        }
        if (facts.into() != null) {
            row.put("into", facts.into().written());
        }
    }
}
