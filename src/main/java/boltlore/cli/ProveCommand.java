package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import boltlore.proof.FamilyProof;
import boltlore.proof.Prover;
import boltlore.proof.kinds.Kinds;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Proves a catalogue before a customer finds the hole in it. */
@Command(
        name = "prove",
        description = "Prove what must hold of every valid order of a family, or show an order that refutes it.")
final class ProveCommand extends RoomCommand {

    @Parameters(arity = "0..*", paramLabel = "FAMILY", description = "Families; without one all are proved.")
    private List<String> families = new ArrayList<>();

    @Option(
            names = "--within",
            paramLabel = "TIME",
            converter = Within.class,
            description = "Stop after this time (500ms, 30s, 5m) and name what is left unproved.")
    private @Nullable Duration within;

    @Option(
            names = "--witnesses",
            paramLabel = "FOLDER",
            description = "Write an order file for each defect that an order can show, ready to run with 'kit'.")
    private @Nullable Path witnesses;

    @Option(
            names = "--evidence",
            paramLabel = "FOLDER",
            description = "Write every statement in the DIMACS format with the answer to expect, and a script that"
                    + " checks them again with any solver.")
    private @Nullable Path evidence;

    @Option(names = "--report", paramLabel = "FILE", description = "Write the proof as a workbook (XLSX).")
    private @Nullable Path report;

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Override
    int run(Screen screen) {
        return done(
                screen,
                catalogue
                        .read()
                        .then(known -> families(known)
                                .then(asked -> Outcome.sound(
                                        Interruptible.run(deadline(), until -> prove(screen, known, asked, until))))));
    }

    private Deadline deadline() {
        long nanos = within == null ? Long.MAX_VALUE / 4 : within.toNanos();
        return Deadline.in(nanos, System::nanoTime);
    }

    private Outcome<List<Family>> families(Catalogue known) {
        List<Fault> unknown = families.stream()
                .filter(name -> !known.families().containsKey(name))
                .map(name -> Fault.of(
                        "",
                        "family '" + name + "'",
                        "a family of the catalogue",
                        Nearest.advice(
                                name,
                                known.families().keySet(),
                                "There are: "
                                        + String.join(", ", known.families().keySet()))))
                .toList();
        List<String> asked = families.isEmpty()
                ? List.copyOf(known.families().keySet())
                : families.stream().distinct().toList();
        return unknown.isEmpty()
                ? Outcome.sound(asked.stream().map(known::family).toList())
                : Outcome.faulty(unknown);
    }

    private int prove(Screen screen, Catalogue known, List<Family> asked, Deadline until) {
        List<FamilyProof> proofs = new ArrayList<>();
        ProofProgress progress = new ProofProgress(aside());
        for (Family family : asked) {
            proofs.add(Prover.prove(known, family, Kinds.all(), until, progress.of(family.name())));
        }
        progress.end();
        ProofResults results = ProofResults.of(known, proofs);
        List<Fault> faults = new ArrayList<>();
        if (witnesses != null) {
            faults.addAll(results.writeWitnesses(witnesses));
        }
        if (evidence != null) {
            faults.addAll(results.writeEvidence(evidence));
        }
        if (report != null) {
            faults.addAll(results.writeReport(known, report));
        }
        if (json()) {
            screen.line(results.json().written().stripTrailing());
        } else {
            results.print(screen);
        }
        screen.flush();
        return faults.isEmpty() ? results.exit() : refused(faults, Exit.NOT_WRITTEN);
    }
}
