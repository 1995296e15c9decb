package boltlore.proof.fits;

import boltlore.findings.Severity;
import boltlore.proof.FamilyView;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.proof.Statement;
import boltlore.proof.StatementKind;
import java.util.List;
import java.util.function.Function;

/**
 * Statements that no valid order has something of one kind that does not fit.
 *
 * @param finds all that orders may have of it, each by its subject and detail, and when
 */
record FitStatements(
        String name, Severity severity, String holds, String mend, Function<KitView, List<PossibleFinding>> finds)
        implements StatementKind {

    @Override
    public List<Statement> statements(FamilyView family) {
        return finds.apply(family.kept()).stream()
                .map(finding -> finding.statement(this))
                .toList();
    }
}
