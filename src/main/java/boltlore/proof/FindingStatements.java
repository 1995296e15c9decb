package boltlore.proof;

import boltlore.findings.Severity;
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
        return findings(family.kept()).stream()
                .map(finding -> finding.statement(this))
                .toList();
    }
}
