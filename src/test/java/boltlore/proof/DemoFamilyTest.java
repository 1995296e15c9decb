package boltlore.proof;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.choices.Choices;
import boltlore.faults.Outcome;
import boltlore.findings.Severity;
import boltlore.logic.Count;
import boltlore.order.LeftOut;
import boltlore.resolution.Finding;
import boltlore.resolution.Resolution;
import boltlore.resolution.Resolver;
import boltlore.resolution.rules.RuleResolver;
import java.math.BigInteger;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo family as it is delivered: what it lets through has been accepted, and nothing else is there. */
class DemoFamilyTest {

    private static final FamilyProof PROOF = DemoFamily.prove(DemoFamily.catalogue(), DemoFamily.VAN);

    private static List<String> found(Severity severity) {
        return PROOF.defects()
                .filter(defect -> defect.statement().kind().severity() == severity)
                .map(defect -> defect.statement().title())
                .toList();
    }

    @Test
    void nothing_stops_an_order() {
        assertThat(found(Severity.STOP)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {DemoFamily.VAN, "stook-pickup"})
    void all_that_is_to_be_looked_at_is_accepted_and_nothing_is_accepted_in_vain(String family) {
        FamilyProof proof = DemoFamily.prove(DemoFamily.catalogue(), family);

        assertThat(proof.openDefects()).isEmpty();
        assertThat(proof.acceptedDefects()).isNotEmpty();
        assertThat(proof.idleAcceptances()).isEmpty();
    }

    @Test
    void what_a_person_must_look_at_are_chargers_inlets_and_labels_that_the_limits_let_through() {
        assertThat(found(Severity.CHECK))
                .containsExactly(
                        "charger has more phases than the inlet: eleven (type-1)",
                        "charger has more phases than the inlet: eleven (j3400)",
                        "charger has more phases than the inlet: eleven-two-way (type-1)",
                        "charger has more phases than the supply: eleven (one-phase-32)",
                        "charger has more phases than the supply: eleven (split-phase-32)",
                        "charger has more phases than the supply: eleven-two-way (one-phase-32)",
                        "inlet of another market: type-1 (australia-new-zealand)",
                        "labels in another language than the market's: de (north-america)");
    }

    @Test
    void every_statement_is_answered() {
        assertThat(PROOF.answers())
                .isNotEmpty()
                .allMatch(answer -> answer instanceof Answer.Proved || answer instanceof Answer.Defect);
    }

    @Test
    void the_valid_orders_are_as_many_as_plain_enumeration_finds() {
        long plain = PlainVariants.list(PROOF.family()).orElseThrow().size();

        assertThat(PROOF.orders())
                .isEqualTo(new Count.Exactly(
                        BigInteger.valueOf(plain).multiply(PlainVariants.ordersEach(PROOF.family()))));
    }

    @Test
    void each_witness_resolves_to_a_kit_with_the_finding_that_it_shows() {
        Resolver resolver = new RuleResolver(DemoFamily.catalogue());

        assertThat(PROOF.defects().filter(defect -> defect.statement().kind() instanceof FindingStatements))
                .hasSize(8)
                .allSatisfy(defect -> assertThat(
                                findings(resolver, defect.witness().orElseThrow()))
                        .contains(new Finding(
                                ((FindingStatements) defect.statement().kind()).finding(),
                                defect.statement().subject(),
                                defect.statement().detail())));
    }

    private static List<Finding> findings(Resolver resolver, Choices choices) {
        Outcome<Resolution> outcome = resolver.resolve(choices, new LeftOut.Undecided());
        return List.copyOf(((Outcome.Sound<Resolution>) outcome).value().findings());
    }

    @Test
    void counts_of_defects_have_been_checked_by_plain_enumeration() {
        assertThat(PROOF.defects())
                .allSatisfy(defect -> assertThat(defect.touched().checkedBy()).isEqualTo("plain enumeration"));
    }
}
