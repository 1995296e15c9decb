package boltlore.proof.sheets;

import boltlore.proof.Answer;
import boltlore.proof.FamilyProof;
import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import java.util.List;
import java.util.stream.Stream;

/** What is good to know without being a defect, and what was neither proved nor refuted. */
final class RestTables {

    private RestTables() {}

    static TableBuilder information(List<FamilyProof> proofs) {
        TableBuilder table = Table.named("information")
                .columns(
                        Column.text("family", "Family"),
                        Column.text("kind", "Kind"),
                        Column.text("subject", "Subject"),
                        Column.text("sentence", "What holds").atMost(60));
        for (FamilyProof proof : proofs) {
            proof.information()
                    .map(Answer.Defect::statement)
                    .forEach(statement -> table.row()
                            .put("family", proof.family().name())
                            .put("kind", statement.kind().name())
                            .put("subject", statement.subject())
                            .put("sentence", statement.refuted()));
        }
        return table;
    }

    static TableBuilder accepted(List<FamilyProof> proofs) {
        TableBuilder table = Table.named("accepted")
                .columns(
                        Column.text("family", "Family"),
                        Column.text("finding", "Finding").atMost(40),
                        Column.whole("affected", "Orders affected"),
                        Column.text("because", "Accepted because").atMost(60));
        for (FamilyProof proof : proofs) {
            proof.acceptedDefects()
                    .forEach(defect -> table.row()
                            .put("family", proof.family().name())
                            .put("finding", defect.statement().title())
                            .put("affected", Counted.cell(defect.touched().orders()))
                            .put(
                                    "because",
                                    proof.acceptance(defect).orElseThrow().because()));
        }
        return table;
    }

    static TableBuilder open(List<FamilyProof> proofs) {
        TableBuilder table = Table.named("open")
                .columns(
                        Column.text("family", "Family"),
                        Column.text("statement", "Statement").atMost(60),
                        Column.text("why", "Why").atMost(60));
        for (FamilyProof proof : proofs) {
            openOf(proof)
                    .forEach(answer -> table.row()
                            .put("family", proof.family().name())
                            .put("statement", answer.statement().title())
                            .put("why", why(answer)));
        }
        return table;
    }

    static Stream<Answer> openOf(FamilyProof proof) {
        return proof.answers().stream()
                .filter(answer -> answer instanceof Answer.NotDecided || answer instanceof Answer.Unproved);
    }

    private static String why(Answer answer) {
        return answer instanceof Answer.NotDecided undecided ? undecided.why() : "the time was up";
    }
}
