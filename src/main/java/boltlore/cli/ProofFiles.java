package boltlore.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The files that a proof is asked to leave. */
final class ProofFiles {

    @Option(
            names = "--examples",
            paramLabel = "FOLDER",
            description =
                    "Write an order file for each defect that an order can show (or for each variant of --trial-builds),"
                            + " ready to run with 'kit'.")
    @Nullable
    Path witnesses;

    @Option(
            names = "--evidence",
            paramLabel = "FOLDER",
            description = "Write every statement in the DIMACS format with the answer to expect, and a script that"
                    + " checks them again with any solver.")
    @Nullable
    Path evidence;

    @Option(names = "--report", paramLabel = "FILE", description = "Write the proof as a workbook (XLSX).")
    @Nullable
    Path report;
}
