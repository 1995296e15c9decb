package boltlore.proof.kinds;

import boltlore.catalogue.Limit;
import boltlore.findings.Severity;
import boltlore.logic.Any;
import boltlore.proof.FamilyView;
import boltlore.proof.Question;
import boltlore.proof.Statement;
import boltlore.proof.StatementKind;
import java.util.List;

/** A limit that forbids nothing which the others do not forbid as well. */
final class ImpliedLimit implements StatementKind {

    private final List<StatementKind> saidAlreadyBy;

    ImpliedLimit(StatementKind... saidAlreadyBy) {
        this.saidAlreadyBy = List.of(saidAlreadyBy);
    }

    @Override
    public String name() {
        return "limit implied by others";
    }

    @Override
    public Severity severity() {
        return Severity.CHECK;
    }

    @Override
    public String holds() {
        return "Every limit forbids something that the others allow.";
    }

    @Override
    public String mend() {
        return "Take the limit out, or correct it: these other limits already forbid all that it forbids.";
    }

    @Override
    public List<StatementKind> saidAlreadyBy() {
        return saidAlreadyBy;
    }

    @Override
    public List<Statement> statements(FamilyView family) {
        return family.family().limits().stream().map(this::statement).toList();
    }

    private Statement statement(Limit limit) {
        return new Statement(
                this,
                limit.name(),
                "",
                "Limit " + limit.name() + " forbids nothing that the other limits allow.",
                new Question.Asked(limit.forbids(), true, Question.Under.allBut(limit)),
                Any.NEVER,
                List.of(),
                List.of(limit));
    }
}
