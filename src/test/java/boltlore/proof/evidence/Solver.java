package boltlore.proof.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A solver of the operating system's, which reads DIMACS from its input. */
record Solver(String name, List<String> arguments) {

    static final Solver CADICAL = new Solver("cadical", List.of("-q"));
    static final Solver PICOSAT = new Solver("picosat", List.of("-n"));

    /** What it said, and its exit code: 10 for satisfiable, 20 for not. */
    record Said(int exit, String text) {}

    void mustBeHere() {
        String path = System.getenv().getOrDefault("PATH", "");
        assertThat(Arrays.stream(path.split(":", -1)).anyMatch(folder -> Files.isExecutable(Path.of(folder, name))))
                .as("This test needs the solver '%s': .ci/run installs it, or 'apt-get install %s' does", name, name)
                .isTrue();
    }

    String answer(String dimacs) {
        int exit = solve(dimacs).exit();
        return exit == 10 ? "SAT" : exit == 20 ? "UNSAT" : "exit code " + exit;
    }

    Said solve(String dimacs) {
        List<String> command = new ArrayList<>(List.of(name));
        command.addAll(arguments);
        try {
            Process process = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            try (OutputStream in = process.getOutputStream()) {
                in.write(dimacs.getBytes(StandardCharsets.US_ASCII));
            }
            try (InputStream out = process.getInputStream()) {
                String text = new String(out.readAllBytes(), StandardCharsets.US_ASCII);
                return new Said(process.waitFor(), text);
            }
        } catch (IOException e) {
            throw new AssertionError("The solver '" + name + "' cannot be asked", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }
}
