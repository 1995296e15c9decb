package boltlore.proof.kinds;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.findings.Severity;
import boltlore.proof.FamilyView;
import boltlore.proof.Question;
import boltlore.proof.Statement;
import boltlore.proof.StatementKind;
import java.util.ArrayList;
import java.util.List;

/** A value that every order has although others are offered; an option with one value offers no choice. */
final class ForcedValue implements StatementKind {

    @Override
    public String name() {
        return "value always forced";
    }

    @Override
    public Severity severity() {
        return Severity.CHECK;
    }

    @Override
    public String holds() {
        return "No value is forced on every order while others are offered.";
    }

    @Override
    public String mend() {
        return "Narrow one of these limits, or do not ask what has one answer only.";
    }

    @Override
    public List<Statement> statements(FamilyView family) {
        List<Statement> all = new ArrayList<>();
        for (Option option : family.family().options()) {
            for (OptionValue value : option.values().size() == 1 ? List.<OptionValue>of() : option.values()) {
                all.add(new Statement(
                        this,
                        value.value(),
                        option.name().text(),
                        "Every valid order has " + option.name() + " = " + value.value() + ", though "
                                + (option.values().size() - 1) + " more are offered.",
                        Question.someOrder(new Condition.Not(Value.is(option.name(), value.value()))),
                        Condition.ALWAYS,
                        List.of(),
                        List.of()));
            }
        }
        return all;
    }
}
