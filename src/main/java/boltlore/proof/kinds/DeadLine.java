package boltlore.proof.kinds;

import boltlore.findings.Severity;
import boltlore.logic.Any;
import boltlore.proof.FamilyView;
import boltlore.proof.Question;
import boltlore.proof.Statement;
import boltlore.proof.StatementKind;
import java.util.List;

/** A line whose condition no valid order fulfils. */
final class DeadLine implements StatementKind {

    @Override
    public String name() {
        return "line in no order";
    }

    @Override
    public Severity severity() {
        return Severity.CHECK;
    }

    @Override
    public String holds() {
        return "Every line is in the kit of some valid order.";
    }

    @Override
    public String mend() {
        return "Correct the line's condition, narrow one of these limits, or take the line out.";
    }

    @Override
    public List<Statement> statements(FamilyView family) {
        return family.family()
                .lines()
                .map(line -> new Statement(
                        this,
                        line.name().text(),
                        "",
                        "No valid order selects line " + line.name() + " with part " + line.part() + ".",
                        Question.someOrder(family.kept().kit().called(line.name())),
                        Any.NEVER,
                        List.of(line.name()),
                        List.of()))
                .toList();
    }
}
