package boltlore.proof.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.proof.WorkedFamilies;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script that goes with the statements, run as a reader of the folder would run it. */
@Tag("solvers")
class CheckScriptTest {

    private record Said(int exit, String text) {}

    @TempDir
    private Path folder;

    @BeforeEach
    void write() throws IOException {
        for (Map.Entry<String, String> file :
                new Joined(WorkedFamilies.prove("film-overlap")).files().entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.writeString(path, file.getValue());
        }
    }

    @Test
    void any_solver_given_as_argument_checks_every_statement() throws Exception {
        Solver.PICOSAT.mustBeHere();
        Solver.CADICAL.mustBeHere();

        assertThat(check("picosat", "-n").text()).contains("statements checked, 0 differ.");
        assertThat(check("picosat", "-n").exit()).isZero();
        assertThat(check("cadical", "-q").exit()).isZero();
    }

    @Test
    void a_wrong_answer_is_named() throws Exception {
        Solver.CADICAL.mustBeHere();
        Path index = folder.resolve("statements.tsv");
        String before = Files.readString(index);
        Files.writeString(index, before.replaceFirst("00002\tSAT", "00002\tUNSAT"));
        assertThat(Files.readString(index)).isNotEqualTo(before);

        Said said = check("cadical", "-q");

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.text())
                .contains("00002 two alternatives selected: print-film (a, b): expected UNSAT, found SAT.")
                .contains("1 differ.");
    }

    @Test
    void a_solver_that_is_not_there_is_named() throws Exception {
        Said said = check("no-such-solver");

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.text()).contains("There is no solver 'no-such-solver' on this machine.");
    }

    private Said check(String... solver) throws IOException, InterruptedException {
        List<String> command =
                new ArrayList<>(List.of("sh", folder.resolve("check.sh").toString()));
        command.addAll(List.of(solver));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Said(process.waitFor(), text);
    }
}
