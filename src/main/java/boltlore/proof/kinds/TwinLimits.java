package boltlore.proof.kinds;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Limit;
import boltlore.choices.Mentions;
import boltlore.findings.Severity;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.OptionName;
import boltlore.proof.FamilyView;
import boltlore.proof.Question;
import boltlore.proof.Statement;
import boltlore.proof.StatementKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;

/** Two limits over the same options that forbid exactly the same. */
final class TwinLimits implements StatementKind {

    @Override
    public String name() {
        return "limits that say the same";
    }

    @Override
    public Severity severity() {
        return Severity.CHECK;
    }

    @Override
    public String holds() {
        return "No two limits say the same.";
    }

    @Override
    public String mend() {
        return "Keep one of the two, with the better sentence.";
    }

    @Override
    public List<Statement> statements(FamilyView family) {
        Map<SortedSet<OptionName>, List<Limit>> byOptions = new LinkedHashMap<>();
        for (Limit limit : family.family().limits()) {
            byOptions
                    .computeIfAbsent(Mentions.find(limit.forbids()), options -> new ArrayList<>())
                    .add(limit);
        }
        List<Statement> all = new ArrayList<>();
        for (List<Limit> limits : byOptions.values()) {
            for (int i = 0; i < limits.size(); i++) {
                for (int j = i + 1; j < limits.size(); j++) {
                    all.add(statement(limits.get(i), limits.get(j)));
                }
            }
        }
        return all;
    }

    private Statement statement(Limit one, Limit other) {
        Condition differs = Any.of(
                All.of(one.forbids(), new Condition.Not(other.forbids())),
                All.of(other.forbids(), new Condition.Not(one.forbids())));
        return new Statement(
                this,
                one.name(),
                other.name(),
                "Limits " + one.name() + " and " + other.name() + " forbid exactly the same.",
                new Question.Asked(differs, true, Question.Under.NO_LIMIT),
                Any.NEVER,
                List.of(),
                List.of(one, other));
    }
}
