package boltlore.proof.kinds;

import boltlore.catalogue.Condition;
import boltlore.findings.Severity;
import boltlore.logic.Any;
import boltlore.proof.FamilyView;
import boltlore.proof.Question;
import boltlore.proof.Statement;
import boltlore.proof.StatementKind;
import java.util.List;

/** Limits that forbid everything. */
final class NoValidOrder implements StatementKind {

    @Override
    public String name() {
        return "no valid order";
    }

    @Override
    public Severity severity() {
        return Severity.STOP;
    }

    @Override
    public String holds() {
        return "There are valid orders.";
    }

    @Override
    public String mend() {
        return "Take back or narrow one of these limits: together they forbid every order.";
    }

    @Override
    public boolean endsAll() {
        return true;
    }

    @Override
    public List<Statement> statements(FamilyView family) {
        return List.of(new Statement(
                this,
                family.family().name(),
                "",
                "No choice of options keeps all limits.",
                Question.someOrder(Condition.ALWAYS),
                Any.NEVER,
                List.of(),
                List.of()));
    }
}
