package boltlore.proof.kinds;

import boltlore.catalogue.Line;
import boltlore.findings.Severity;
import boltlore.logic.All;
import boltlore.proof.FamilyView;
import boltlore.proof.Question;
import boltlore.proof.Statement;
import boltlore.proof.StatementKind;
import java.util.List;

/** A bracket line that supports nothing in any order that has it. */
final class IdleBracket implements StatementKind {

    private final StatementKind deadLine;

    IdleBracket(StatementKind deadLine) {
        this.deadLine = deadLine;
    }

    @Override
    public String name() {
        return "bracket that is never of use";
    }

    @Override
    public Severity severity() {
        return Severity.CHECK;
    }

    @Override
    public String holds() {
        return "Every bracket carries something in some valid order.";
    }

    @Override
    public String mend() {
        return "Correct what the bracket carries or when it ships, or take it out.";
    }

    @Override
    public List<StatementKind> saidAlreadyBy() {
        return List.of(deadLine);
    }

    @Override
    public List<Statement> statements(FamilyView family) {
        return family.family()
                .lines()
                .filter(Line::isBracket)
                .map(line -> statement(family, line))
                .toList();
    }

    private Statement statement(FamilyView family, Line line) {
        return new Statement(
                this,
                line.name().text(),
                "",
                "Bracket " + line.name() + " supports nothing in any order that has it.",
                Question.someOrder(All.of(
                        family.kept().kit().called(line.name()),
                        family.kept().kit().useful(line.name()))),
                family.kept().kit().called(line.name()),
                List.of(line.name()),
                List.of());
    }
}
