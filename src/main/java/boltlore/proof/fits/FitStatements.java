package boltlore.proof.fits;

import boltlore.catalogue.Catalogue;
import boltlore.choices.Choices;
import boltlore.findings.Severity;
import boltlore.proof.FamilyView;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.proof.Statement;
import boltlore.proof.StatementKind;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Statements that no valid order has something of one kind that does not fit.
 *
 * @param finds all that orders may have of it, and when
 */
record FitStatements(
        String name, Severity severity, String holds, String mend, Function<KitView, List<FitFinding.Possible>> finds)
        implements StatementKind {

    @Override
    public List<Statement> statements(FamilyView family) {
        return finds.apply(family.kept()).stream()
                .map(each -> new PossibleFinding(
                                each.about(),
                                each.detail(),
                                each.when(),
                                each.lines(),
                                each.finding().says())
                        .statement(this))
                .toList();
    }

    /** Names the parts that meet in that order; of the whole family those of several may be named. */
    @Override
    public String refutedBy(Statement statement, Catalogue catalogue, Choices order) {
        return in(KitView.of(catalogue, order, line -> false))
                .filter(each -> each.about().equals(statement.subject())
                        && each.detail().equals(statement.detail()))
                .map(each -> each.finding().says())
                .findFirst()
                .orElse(statement.refuted());
    }

    /** What the kit of one order has of it. */
    Stream<FitFinding.Possible> in(KitView settled) {
        return finds.apply(settled).stream()
                .filter(each ->
                        each.when().filter(condition -> condition.isAlways()).isPresent());
    }
}
