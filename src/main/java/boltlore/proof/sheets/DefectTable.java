package boltlore.proof.sheets;

import boltlore.catalogue.Limit;
import boltlore.proof.Answer;
import boltlore.proof.FamilyProof;
import boltlore.proof.Statement;
import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A row for each defect: what it is, whom it touches, what is involved, how to mend it. */
final class DefectTable {

    private DefectTable() {}

    static TableBuilder compose(List<FamilyProof> proofs, Function<Answer.Defect, String> witness) {
        TableBuilder table = Table.named("defects").columns(columns());
        for (FamilyProof proof : proofs) {
            proof.openDefects().forEach(defect -> fill(table.row(), proof, defect, witness.apply(defect)));
        }
        return table;
    }

    private static Column[] columns() {
        return new Column[] {
            Column.text("family", "Family").atMost(14),
            Column.text("severity", "Severity").atMost(10),
            Column.text("kind", "Kind").atMost(16),
            Column.text("subject", "Subject").atMost(20),
            Column.text("sentence", "What is wrong").atMost(34),
            Column.whole("affected", "Orders affected"),
            Column.percent("share", "Share", 2),
            Column.text("every", "Every order with").atMost(20),
            Column.text("lines", "Lines").atMost(18),
            Column.text("limits", "Limits").atMost(18),
            Column.text("fix", "Fix").atMost(26),
            Column.text("example", "Example order").atMost(18)
        };
    }

    private static void fill(RowBuilder row, FamilyProof proof, Answer.Defect defect, String witness) {
        Statement statement = defect.statement();
        String subject =
                statement.detail().isEmpty() ? statement.subject() : statement.subject() + ": " + statement.detail();
        row.put("family", proof.family().name())
                .put("severity", statement.kind().severity().says())
                .put("kind", statement.kind().name())
                .put("subject", subject)
                .put("sentence", statement.refuted())
                .put("affected", Counted.cell(defect.touched().orders()))
                .put("every", joined(defect.cause().choices()))
                .put("lines", joined(statement.lines()))
                .put("limits", joined(defect.limits().stream().map(Limit::name).toList()))
                .put("fix", statement.kind().mend())
                .put("example", witness);
        defect.touched().percent().ifPresent(percent -> row.put("share", percent));
    }

    private static String joined(List<?> names) {
        return names.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
