package boltlore.proof.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.logic.Count;
import boltlore.proof.FamilyProof;
import boltlore.proof.WorkedFamilies;
import java.math.BigInteger;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An answer-set solver enumerates the models of the clauses: as many as there are valid orders. */
@Tag("solvers")
class ModelCountTest {

    private static final Solver CLASP = new Solver("clasp", List.of("0", "--quiet=2"));
    private static final Pattern MODELS = Pattern.compile("c Models\\s*:\\s*(\\d+)");

    @ParameterizedTest
    @ValueSource(strings = {"t-shirt", "phone", "queens-6", "queens-8", "series-6", "two-of-three", "pigeons-3-2"})
    void there_are_as_many_models_as_valid_orders(String family) {
        CLASP.mustBeHere();
        FamilyProof proof = WorkedFamilies.prove(family);
        Joined evidence = new Joined(proof);
        String allKept = evidence.variable("all limits are kept") + " 0";

        assertThat(proof.orders()).isEqualTo(new Count.Exactly(models(evidence.dimacs(List.of(allKept)))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"film-hole", "film-overlap", "film-dead"})
    void each_defect_touches_as_many_orders_as_its_clauses_have_models(String family) {
        CLASP.mustBeHere();
        Joined evidence = new Joined(WorkedFamilies.prove(family));
        List<Joined.Row> counted = evidence.rows().stream()
                .filter(row -> !row.models().equals("-"))
                .toList();

        assertThat(counted)
                .anyMatch(row -> !row.models().equals("0"))
                .allSatisfy(row -> assertThat(models(evidence.dimacs(row))).isEqualTo(new BigInteger(row.models())));
    }

    private static BigInteger models(String dimacs) {
        Matcher matcher = MODELS.matcher(CLASP.solve(dimacs).text());
        assertThat(matcher.find()).isTrue();
        return new BigInteger(matcher.group(1));
    }
}
