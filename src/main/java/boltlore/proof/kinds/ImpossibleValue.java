package boltlore.proof.kinds;

import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.findings.Severity;
import boltlore.logic.Any;
import boltlore.proof.FamilyView;
import boltlore.proof.Question;
import boltlore.proof.Statement;
import boltlore.proof.StatementKind;
import java.util.ArrayList;
import java.util.List;

/** A value that is offered and can never be chosen. */
final class ImpossibleValue implements StatementKind {

    @Override
    public String name() {
        return "value never possible";
    }

    @Override
    public Severity severity() {
        return Severity.CHECK;
    }

    @Override
    public String holds() {
        return "Every value of every option stands in some valid order.";
    }

    @Override
    public String mend() {
        return "Narrow one of these limits, or take the value out of the option.";
    }

    @Override
    public List<Statement> statements(FamilyView family) {
        List<Statement> all = new ArrayList<>();
        for (Option option : family.family().options()) {
            for (OptionValue value : option.values()) {
                all.add(new Statement(
                        this,
                        value.value(),
                        option.name().text(),
                        "No valid order has " + option.name() + " = " + value.value() + ".",
                        Question.someOrder(Value.is(option.name(), value.value())),
                        Any.NEVER,
                        List.of(),
                        List.of()));
            }
        }
        return all;
    }
}
