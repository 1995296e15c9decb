package boltlore.proof.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.proof.DemoFamily;
import boltlore.proof.FamilyProof;
import boltlore.proof.WorkedFamilies;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Two general solvers, made by others, give the same answer to every statement. */
@Tag("solvers")
class OtherSolversTest {

    private static final Map<String, Joined> EVIDENCE = new ConcurrentHashMap<>();

    static Stream<Arguments> solversAndFamilies() {
        return Stream.of(Solver.CADICAL, Solver.PICOSAT)
                .flatMap(solver -> DemoFamily.catalogue().families().keySet().stream()
                        .map(family -> Arguments.of(solver, family)));
    }

    private static Joined evidence(String family) {
        return EVIDENCE.computeIfAbsent(family, name -> new Joined(DemoFamily.prove(DemoFamily.catalogue(), name)));
    }

    @ParameterizedTest
    @MethodSource("solversAndFamilies")
    void every_statement_of_a_demo_family_gets_the_same_answer(Solver solver, String family) {
        solver.mustBeHere();
        Joined evidence = evidence(family);
        List<Joined.Row> rows = evidence.rows();

        List<String> different = rows.parallelStream()
                .filter(row -> !solver.answer(evidence.dimacs(row)).equals(row.answer()))
                .map(Joined.Row::statement)
                .toList();

        assertThat(rows).hasSizeGreaterThan(1_000);
        assertThat(different).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"film-hole", "film-overlap", "film-dead", "t-shirt-idle-limit", "pigeons-4-3"})
    void every_statement_of_a_family_with_defects_gets_the_same_answer(String family) {
        FamilyProof proof = WorkedFamilies.prove(family);
        Joined evidence = new Joined(proof);

        assertThat(proof.defects()).isNotEmpty();
        for (Solver solver : List.of(Solver.CADICAL, Solver.PICOSAT)) {
            solver.mustBeHere();
            assertThat(evidence.rows())
                    .allSatisfy(row ->
                            assertThat(solver.answer(evidence.dimacs(row))).isEqualTo(row.answer()));
        }
    }
}
