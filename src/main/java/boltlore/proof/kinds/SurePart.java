package boltlore.proof.kinds;

import boltlore.catalogue.Condition;
import boltlore.findings.Severity;
import boltlore.measure.PartNumber;
import boltlore.proof.FamilyView;
import boltlore.proof.Question;
import boltlore.proof.Statement;
import boltlore.proof.StatementKind;
import java.util.ArrayList;
import java.util.List;

/** A part that every valid order brings: no defect, but good to know for buying ahead. */
final class SurePart implements StatementKind {

    @Override
    public String name() {
        return "part in every order";
    }

    @Override
    public Severity severity() {
        return Severity.NOTE;
    }

    @Override
    public String holds() {
        return "No part is in every kit.";
    }

    @Override
    public String mend() {
        return "Nothing to fix: such a part can be bought and made ahead of any order.";
    }

    @Override
    public List<Statement> statements(FamilyView family) {
        List<Statement> all = new ArrayList<>();
        for (PartNumber part : family.kept().bringings().parts()) {
            all.add(new Statement(
                    this,
                    part.text(),
                    "",
                    "Every valid order contains part " + part + " "
                            + family.catalogue().part(part).name().english() + ".",
                    Question.someOrder(new Condition.Not(family.kept().parts().present(part))),
                    Condition.ALWAYS,
                    DeadPart.lines(family.kept(), part),
                    List.of()));
        }
        return all;
    }
}
