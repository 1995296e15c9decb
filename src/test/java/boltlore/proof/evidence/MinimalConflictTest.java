package boltlore.proof.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Limit;
import boltlore.proof.Answer;
import boltlore.proof.FamilyProof;
import boltlore.proof.WorkedFamilies;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The limits that are named as the reason why there is no order: another program's minimal unsatisfiable set of clauses
 * needs each of them.
 */
@Tag("solvers")
class MinimalConflictTest {

    private static final Solver PICOMUS = new Solver("picomus", List.of());

    @ParameterizedTest
    @ValueSource(strings = {"four-limits", "pigeons-3-2", "pigeons-4-3", "film-dead"})
    void none_of_the_limits_named_can_be_spared(String family) {
        new Solver("picosat", List.of()).mustBeHere();
        FamilyProof proof = WorkedFamilies.prove(family);
        Joined evidence = new Joined(proof);

        assertThat(proof.defects()
                        .filter(defect -> defect.witness().isEmpty())
                        .filter(defect -> !defect.limits().isEmpty()))
                .isNotEmpty()
                .allSatisfy(defect -> eachIsNeeded(evidence, defect));
    }

    private static void eachIsNeeded(Joined evidence, Answer.Defect defect) {
        List<String> clauses = new ArrayList<>(statement(evidence, defect));
        int allKept = evidence.variable("all limits are kept");
        assertThat(clauses.remove(allKept + " 0")).isTrue();
        for (Limit limit : defect.limits()) {
            clauses.add(evidence.variable("limit " + limit.name() + " is kept") + " 0");
        }
        String dimacs = evidence.dimacs(clauses);
        List<String> inFile = dimacs.lines().skip(1).toList();

        Set<String> needed =
                needed(dimacs).stream().map(number -> inFile.get(number - 1)).collect(Collectors.toSet());

        assertThat(needed)
                .containsAll(defect.limits().stream()
                        .map(limit -> evidence.variable("limit " + limit.name() + " is kept") + " 0")
                        .toList());
    }

    private static List<String> statement(Joined evidence, Answer.Defect defect) {
        Joined.Row row = evidence.rows().stream()
                .filter(each -> each.statement().equals(defect.statement().title()))
                .findFirst()
                .orElseThrow();
        return Joined.clauses(evidence.files().get("statements/" + row.number() + ".add"));
    }

    /** Numbers of the clauses, from 1, that its minimal set consists of: lines 'v 12', the last one 'v 0'. */
    private static List<Integer> needed(String dimacs) {
        Solver.Said said = PICOMUS.solve(dimacs);
        assertThat(said.exit()).isEqualTo(20);
        return said.text()
                .lines()
                .filter(line -> line.startsWith("v "))
                .map(line -> Integer.valueOf(line.substring(2).strip()))
                .filter(number -> number > 0)
                .toList();
    }
}
