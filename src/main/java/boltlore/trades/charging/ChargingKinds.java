package boltlore.trades.charging;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import boltlore.findings.Finding;
import boltlore.findings.Severity;
import boltlore.logic.Any;
import boltlore.proof.FamilyView;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.proof.Statement;
import boltlore.proof.StatementKind;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What charging and high voltage of a kit may show, asked of every valid order, so that the engineer hears of it before a
 * customer does: the same comparisons, in each case that options make of pack, charger, inlet, cables and loads.
 */
public final class ChargingKinds {

    private ChargingKinds() {}

    /** The kinds, for one run of proofs: what they ask is worked out once for each family. */
    public static List<StatementKind> all() {
        Asked asked = new Asked();
        return Stream.of(ChargingFinding.values())
                .filter(ChargingFinding::proved)
                .<StatementKind>map(kind -> new OfKind(kind, asked))
                .toList();
    }

    /** Everything that some order of the last family may have. */
    private static final class Asked {

        private @Nullable KitView last;
        private List<ChargingCases.Case> cases = List.of();

        List<ChargingCases.Case> of(KitView kit) {
            if (!kit.equals(last)) {
                cases = new ChargingCases(kit).all();
                last = kit;
            }
            return cases;
        }
    }

    private record OfKind(ChargingFinding kind, Asked asked) implements StatementKind {

        @Override
        public String name() {
            return kind.code();
        }

        @Override
        public Severity severity() {
            return kind.severity();
        }

        @Override
        public String holds() {
            return "No valid order has '" + kind.code() + "'.";
        }

        @Override
        public String mend() {
            return "Correct electrics.json, or give these orders another part.";
        }

        /** As the kit of an order tells it, so that accepting and waiving name it alike. */
        @Override
        public List<Statement> statements(FamilyView family) {
            Map<String, List<ChargingCases.Case>> bySubject = asked.of(family.kept()).stream()
                    .filter(each -> each.finding().kind() == kind)
                    .collect(Collectors.groupingBy(
                            each -> each.finding().subject(), LinkedHashMap::new, Collectors.toList()));
            return bySubject.entrySet().stream()
                    .map(each -> statement(each.getKey(), each.getValue()))
                    .toList();
        }

        private Statement statement(String subject, List<ChargingCases.Case> cases) {
            Optional<Condition> when = cases.stream()
                            .allMatch(each -> each.when().isPresent())
                    ? Optional.of(Any.of(
                            cases.stream().flatMap(each -> each.when().stream()).toList()))
                    : Optional.empty();
            return new PossibleFinding(
                            subject,
                            "",
                            when,
                            cases.get(0).lines(),
                            cases.get(0).finding().says())
                    .statement(this);
        }

        @Override
        public String refutedBy(Statement statement, Catalogue catalogue, Choices order) {
            return asked.cases.stream()
                    .filter(each -> each.finding().kind() == kind
                            && each.finding().subject().equals(statement.subject()))
                    .filter(each -> each.when()
                            .filter(when -> Conditions.holds(when, order))
                            .isPresent())
                    .map(ChargingCases.Case::finding)
                    .map(Finding::says)
                    .findFirst()
                    .orElse(statement.refuted());
        }
    }
}
