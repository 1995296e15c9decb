package boltlore.proof;

import boltlore.catalogue.Condition;
import boltlore.findings.Severity;
import boltlore.logic.Any;
import boltlore.resolution.FindingKind;
import java.util.List;

/** Statements that no valid order has findings of one kind. */
public interface FindingStatements extends StatementKind {

    FindingKind finding();

    /** All findings of this kind that orders may have, each by its subject and detail, and when. */
    List<PossibleFinding> findings(KitView kit);

    /** Whether what is left out of a kit can bring such a finding about. */
    boolean dependsOnLeftOut();

    @Override
    default String name() {
        return finding().written();
    }

    @Override
    default Severity severity() {
        return finding().severity();
    }

    @Override
    default List<Statement> statements(FamilyView family) {
        return findings(family.kept()).stream().map(this::statement).toList();
    }

    private Statement statement(PossibleFinding finding) {
        Question question = finding.when()
                .map(Question::noOrder)
                .orElseGet(() -> new Question.TooLarge("its quantities depend on too many conditions"));
        Condition touches = finding.when().orElse(Any.NEVER);
        return new Statement(
                this,
                finding.subject(),
                finding.detail(),
                finding.says(),
                question,
                touches,
                finding.lines(),
                List.of());
    }
}
