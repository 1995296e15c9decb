package boltlore.proof.sheets;

import boltlore.findings.Severity;
import boltlore.proof.Answer;
import boltlore.proof.FamilyProof;
import boltlore.proof.StatementKind;
import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** How many statements were proved and refuted, by family and by kind. */
final class SummaryTables {

    private SummaryTables() {}

    static TableBuilder families(List<FamilyProof> proofs) {
        TableBuilder table = Table.named("families")
                .columns(
                        Column.text("family", "Family"),
                        Column.whole("orders", "Valid orders"),
                        Column.whole("statements", "Statements"),
                        Column.whole("stops", "Stop"),
                        Column.whole("check", "Check"),
                        Column.whole("accepted", "Accepted"),
                        Column.whole("open", "Not proved"));
        for (FamilyProof proof : proofs) {
            table.row()
                    .put("family", proof.family().name())
                    .put("orders", Counted.cell(proof.orders()))
                    .put("statements", proof.answers().size())
                    .put("stops", defects(proof, Severity.STOP))
                    .put("check", defects(proof, Severity.CHECK))
                    .put("accepted", proof.acceptedDefects().count())
                    .put("open", RestTables.openOf(proof).count());
        }
        return table;
    }

    private static long defects(FamilyProof proof, Severity severity) {
        return proof.openDefects()
                .filter(defect -> defect.statement().kind().severity() == severity)
                .count();
    }

    static TableBuilder kinds(List<FamilyProof> proofs) {
        TableBuilder table = Table.named("kinds")
                .columns(
                        Column.text("kind", "Kind"),
                        Column.text("severity", "Severity"),
                        Column.whole("proved", "Proved"),
                        Column.whole("refuted", "Refuted"),
                        Column.text("holds", "When all are proved").atMost(40));
        Map<StatementKind, List<Answer>> byKind = new LinkedHashMap<>();
        proofs.stream()
                .flatMap(proof -> proof.answers().stream())
                .forEach(answer -> byKind.computeIfAbsent(answer.statement().kind(), kind -> new ArrayList<>())
                        .add(answer));
        byKind.forEach((kind, answers) -> table.row()
                .put("kind", kind.name())
                .put("severity", kind.severity().says())
                .put("proved", count(answers, Answer.Proved.class::isInstance))
                .put("refuted", count(answers, Answer.Defect.class::isInstance))
                .put("holds", kind.holds()));
        return table;
    }

    private static long count(List<Answer> answers, Predicate<Answer> wanted) {
        return answers.stream().filter(wanted).count();
    }
}
