package boltlore.proof;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Line;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import boltlore.findings.Severity;
import boltlore.logic.Count;
import boltlore.measure.LineName;
import boltlore.measure.OptionName;
import boltlore.measure.PartNumber;
import boltlore.oracle.Oracle;
import boltlore.oracle.Variants;
import boltlore.order.LeftOut;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.Kit;
import boltlore.resolution.Resolution;
import java.math.BigInteger;
import java.util.List;
import java.util.function.Predicate;

/** All valid orders of a small family, each resolved in the plainest way, and what each statement means for them. */
record LookedAt(Catalogue catalogue, Family family, List<Seen> orders) {

    /** An order with all brackets in, and without those of no use. */
    record Seen(Choices choices, Resolution.Resolved kept, Resolution.Resolved leftOut) {

        boolean has(FindingKind kind, Statement about) {
            return kept.findings().contains(new Finding(kind, about.subject(), about.detail()));
        }
    }

    static LookedAt of(Catalogue catalogue, Family family) {
        Oracle oracle = new Oracle(catalogue);
        return new LookedAt(
                catalogue,
                family,
                new Variants(family)
                        .all().stream()
                                .map(choices -> new Seen(
                                        choices,
                                        oracle.resolve(choices, new LeftOut.Undecided()),
                                        oracle.resolve(choices, new LeftOut.AllUnused())))
                                .toList());
    }

    /** Whether looking at the orders refutes the statement. */
    boolean refutes(Statement statement) {
        if (statement.kind() instanceof FindingStatements findings) {
            return some(order -> order.has(findings.finding(), statement));
        }
        return switch (statement.kind().name()) {
            case "no valid order" -> orders.isEmpty();
            case "value never possible" -> !some(order -> chosen(order, statement));
            case "value always forced" -> !some(order -> !chosen(order, statement));
            case "line in no order" -> !some(order -> called(order, statement));
            case "part in no order" -> !some(order -> brings(order, statement));
            case "part in every order" -> !some(order -> !brings(order, statement));
            case "bracket that is never of use" ->
                !some(order -> called(order, statement) && !unused(order.kept().kit(), statement));
            case "leaving out unused brackets creates a stop" -> some(order -> createsStop(order, statement));
            case "limit without effect" -> !someWithout(statement, limit -> limit.when());
            case "limit implied by others" -> !someWithout(statement, Limit::forbids);
            case "limits that say the same" -> same(statement);
            default ->
                throw new AssertionError("Not looked at: " + statement.kind().name());
        };
    }

    private boolean some(Predicate<Seen> wanted) {
        return orders.stream().anyMatch(wanted);
    }

    private static boolean chosen(Seen order, Statement statement) {
        return order.choices()
                .value(new OptionName(statement.detail()))
                .orElseThrow()
                .equals(statement.subject());
    }

    private static boolean called(Seen order, Statement statement) {
        return order.kept().kit().lines().contains(new LineName(statement.subject()));
    }

    private static boolean unused(Kit kit, Statement statement) {
        return kit.unused().contains(new LineName(statement.subject()));
    }

    private static boolean brings(Seen order, Statement statement) {
        return order.kept().kit().contains(new PartNumber(statement.subject()));
    }

    /** The detail begins with the kind of the finding that is created. */
    private static boolean createsStop(Seen order, Statement statement) {
        return order.leftOut().findings().stream()
                .filter(finding -> finding.severity() == Severity.STOP)
                .filter(finding -> !order.kept().findings().contains(finding))
                .anyMatch(finding -> finding.subject().equals(statement.subject())
                        && statement
                                .detail()
                                .equals(finding.kind().written()
                                        + (finding.detail().isEmpty() ? "" : ", " + finding.detail())));
    }

    private boolean someWithout(
            Statement statement, java.util.function.Function<Limit, boltlore.catalogue.Condition> condition) {
        Limit limit = statement.limits().get(0);
        List<Limit> others =
                family.limits().stream().filter(other -> !other.equals(limit)).toList();
        return new Variants(Altered.with(family, "limits", others))
                .all().stream().anyMatch(choices -> Conditions.holds(condition.apply(limit), choices));
    }

    private boolean same(Statement statement) {
        Limit one = statement.limits().get(0);
        Limit other = statement.limits().get(1);
        return new Variants(Altered.with(family, "limits", List.of()))
                .all().stream()
                        .allMatch(choices ->
                                Conditions.holds(one.forbids(), choices) == Conditions.holds(other.forbids(), choices));
    }

    /** The number of orders is right, and what is said of every order with some choices holds of them. */
    void checkTouched(Answer.Defect defect) {
        if (!(defect.statement().kind() instanceof FindingStatements findings)) {
            return;
        }
        List<Seen> touched = orders.stream()
                .filter(order -> order.has(findings.finding(), defect.statement()))
                .toList();
        List<Seen> with = orders.stream()
                .filter(order -> defect.cause().choices().stream()
                        .allMatch(choice -> order.choices()
                                .value(choice.option())
                                .orElseThrow()
                                .equals(choice.value())))
                .toList();

        assertThat(defect.touched().orders()).isEqualTo(new Count.Exactly(BigInteger.valueOf(touched.size())));
        assertThat(touched).extracting(Seen::choices).contains(defect.witness().orElseThrow());
        assertThat(touched).containsAll(with);
        assertThat(defect.cause().onlyThen()).isEqualTo(with.size() == touched.size());
    }

    /** Lines that the family has, for messages. */
    @Override
    public String toString() {
        return family.lines().map(Line::name).toList() + ", " + orders.size() + " orders";
    }
}
