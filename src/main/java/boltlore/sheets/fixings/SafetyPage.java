package boltlore.sheets.fixings;

import boltlore.catalogue.Fixing;
import boltlore.catalogue.JointFacts;
import boltlore.fixings.BoltedJoint;
import boltlore.fixings.KitFixings;
import boltlore.sheets.Column;
import boltlore.sheets.Page;
import boltlore.sheets.PageBuilder;
import boltlore.sheets.RowBuilder;
import boltlore.sheets.Table;
import boltlore.sheets.TableBuilder;

/** Safety joints: each is torqued with a tool that has a number, ticked and signed for. */
final class SafetyPage {

    private static final Column[] COLUMNS = {
        Column.text("joint", "Joint").atMost(28),
        Column.quantity("quantity", "Bolts"),
        Column.text("size", "Size, class"),
        Column.decimal("torque", "Torque", 1).in("Nm"),
        Column.text("stands", "Table, friction").atMost(44),
        Column.decimal("clamp", "Clamped", 0).in("mm"),
        Column.text("into", "Into"),
        Column.tick("torqued", "Torqued"),
        Column.blank("tool", "Tool number"),
        Column.signature("signed", "Signature, date")
    };

    private SafetyPage() {}

    static PageBuilder of(KitFixings fixings, String footer) {
        PageBuilder page = Page.named("Signed joints").landscape().footer(footer);
        page.title("Joints to sign for").add(table(fixings));
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
        torque(row, fixing);
        JointFacts facts = joint.facts();
        if (facts != null) {
            facts(row, facts);
        }
    }

    private static void torque(RowBuilder row, Fixing fixing) {
        if (fixing.torqueNm() != null && fixing.torqueTable() != null && fixing.friction() != null) {
            row.put("torque", fixing.torqueNm())
                    .put("stands", fixing.torqueTable() + "; friction " + JointWords.plain(fixing.friction()));
        }
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
