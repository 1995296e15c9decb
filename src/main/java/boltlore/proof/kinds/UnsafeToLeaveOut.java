package boltlore.proof.kinds;

import boltlore.catalogue.Condition;
import boltlore.findings.Severity;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.proof.FamilyView;
import boltlore.proof.FindingStatements;
import boltlore.proof.PossibleFinding;
import boltlore.proof.Question;
import boltlore.proof.Statement;
import boltlore.proof.StatementKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A finding that stops, brought about by leaving out all brackets that support nothing. */
final class UnsafeToLeaveOut implements StatementKind {

    private final List<FindingStatements> stopping;

    /** @param all of which those count that stop and depend on what is left out */
    UnsafeToLeaveOut(List<StatementKind> all) {
        stopping = all.stream()
                .filter(FindingStatements.class::isInstance)
                .map(FindingStatements.class::cast)
                .filter(kind -> kind.dependsOnLeftOut() && kind.severity() == Severity.STOP)
                .toList();
    }

    @Override
    public String name() {
        return "leaving out unused brackets creates a stop";
    }

    @Override
    public Severity severity() {
        return Severity.STOP;
    }

    @Override
    public String holds() {
        return "Leaving out all brackets that support nothing never stops an order.";
    }

    @Override
    public String mend() {
        return "Say what the bracket really supports, or let the parts that it needs be needed by what uses them.";
    }

    @Override
    public boolean leavesOutUnused() {
        return true;
    }

    @Override
    public List<Statement> statements(FamilyView family) {
        List<Statement> all = new ArrayList<>();
        for (FindingStatements kind : stopping) {
            Map<String, Optional<Condition>> before = new LinkedHashMap<>();
            kind.findings(family.kept()).forEach(finding -> before.put(key(finding), finding.when()));
            for (PossibleFinding after : kind.findings(family.leftOut())) {
                all.add(statement(kind, after, before.getOrDefault(key(after), Optional.of(Any.NEVER))));
            }
        }
        return all;
    }

    private static String key(PossibleFinding finding) {
        return finding.subject() + "\n" + finding.detail();
    }

    private Statement statement(FindingStatements kind, PossibleFinding after, Optional<Condition> before) {
        Optional<Condition> created =
                after.when().flatMap(now -> before.map(then -> All.of(now, new Condition.Not(then))));
        return new Statement(
                this,
                after.subject(),
                kind.name() + (after.detail().isEmpty() ? "" : ", " + after.detail()),
                "Once all unused brackets are left out, a finding '" + kind.name() + "' stops a valid order: "
                        + after.says(),
                created.map(Question::noOrder)
                        .orElseGet(() -> new Question.TooLarge("its quantities depend on too many conditions")),
                created.orElse(Any.NEVER),
                after.lines(),
                List.of());
    }
}
