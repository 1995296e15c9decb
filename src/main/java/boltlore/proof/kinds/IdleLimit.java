package boltlore.proof.kinds;

import boltlore.catalogue.Limit;
import boltlore.findings.Severity;
import boltlore.logic.Any;
import boltlore.proof.FamilyView;
import boltlore.proof.Question;
import boltlore.proof.Statement;
import boltlore.proof.StatementKind;
import java.util.List;

/** A limit of the form 'when, then' whose case the other limits never let happen. */
final class IdleLimit implements StatementKind {

    @Override
    public String name() {
        return "limit without effect";
    }

    @Override
    public Severity severity() {
        return Severity.CHECK;
    }

    @Override
    public String holds() {
        return "The case of every limit can happen.";
    }

    @Override
    public String mend() {
        return "Correct the limit's case, or take the limit out: the others never let its case happen.";
    }

    @Override
    public List<Statement> statements(FamilyView family) {
        return family.family().limits().stream()
                .filter(limit -> limit.then() != null)
                .map(this::statement)
                .toList();
    }

    private Statement statement(Limit limit) {
        return new Statement(
                this,
                limit.name(),
                "",
                "The case of limit " + limit.name() + " never happens: the other limits exclude it.",
                new Question.Asked(limit.when(), true, Question.Under.allBut(limit)),
                Any.NEVER,
                List.of(),
                List.of(limit));
    }
}
