package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.exports.Exports;
import boltlore.exports.SheetSet;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.order.Order;
import boltlore.order.json.OrderWriter;
import boltlore.proof.Answer;
import boltlore.proof.FamilyProof;
import boltlore.proof.Witnesses;
import boltlore.proof.evidence.Evidence;
import boltlore.proof.json.ProofJson;
import boltlore.proof.sheets.ProofReport;
import boltlore.report.SheetFile;
import boltlore.report.xlsx.XlsxWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.function.BiFunction;

/** The proofs of the families that were asked for, and the orders that show their defects. */
final class ProofResults implements ProofTask.Done {

    private final List<FamilyProof> proofs;
    private final List<TrialKits> trials;
    private final List<Witnesses.Witness> witnesses;
    private final IdentityHashMap<Answer.Defect, String> files = new IdentityHashMap<>();

    private final List<String> written = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();

    private ProofResults(List<FamilyProof> proofs, List<TrialKits> trials, List<Witnesses.Witness> witnesses) {
        this.proofs = proofs;
        this.trials = trials;
        this.witnesses = witnesses;
    }

    /** @param trials of each proof, what was tried beside it */
    static ProofResults of(Catalogue catalogue, List<FamilyProof> proofs, List<TrialKits> trials) {
        return new ProofResults(
                proofs,
                trials,
                proofs.stream()
                        .flatMap(proof -> Witnesses.find(catalogue, proof).stream())
                        .toList());
    }

    /** Writes an order for each defect that one can show. A family's proof that ran out of time takes none away. */
    void writeWitnesses(Path folder, BiFunction<Path, List<SheetSet>, Outcome<List<Path>>> write) {
        List<SheetSet> sets = new ArrayList<>();
        List<Answer.Defect> shown = new ArrayList<>();
        for (FamilyProof proof : proofs) {
            List<SheetFile> ofFamily = new ArrayList<>();
            witnesses.stream()
                    .filter(witness ->
                            witness.order().family().equals(proof.family().name()))
                    .forEach(witness -> {
                        shown.add(witness.defect());
                        ofFamily.add(file(witness.order()));
                    });
            sets.add(new SheetSet("prove --examples " + proof.family().name(), ofFamily, !isOpen(proof)));
        }
        Outcome<List<Path>> outcome = write.apply(folder, sets);
        faults.addAll(outcome.faults());
        if (outcome instanceof Outcome.Sound<List<Path>> sound) {
            for (int i = 0; i < shown.size(); i++) {
                files.put(shown.get(i), sound.value().get(i).toString());
            }
        }
    }

    static SheetFile file(Order order) {
        return SheetFile.utf8(order.name() + ".json", OrderWriter.write(order));
    }

    /** Writes a folder for each family with its statements for other solvers, whole or not at all. */
    void writeEvidence(Path folder, BiFunction<Path, List<SheetSet>, Outcome<List<Path>>> write) {
        for (FamilyProof proof : proofs) {
            Path own = folder.resolve(proof.family().name());
            List<SheetFile> evidence = new ArrayList<>();
            int statements = Evidence.write(proof, (name, text) -> evidence.add(SheetFile.utf8(name, text)));
            Outcome<List<Path>> outcome = write.apply(own, List.of(new SheetSet("prove --evidence", evidence, true)));
            faults.addAll(outcome.faults());
            if (outcome.faults().isEmpty()) {
                written.add(own + ": " + statements + " statements to check again, with 'sh check.sh SOLVER'");
            }
        }
    }

    void writeReport(Catalogue catalogue, Path file) {
        SheetFile sheets = new XlsxWriter()
                .write(ProofReport.compose(catalogue, proofs, this::witness))
                .get(0);
        Outcome<Path> outcome = Exports.file(file, "prove --report", sheets.content());
        faults.addAll(outcome.faults());
        if (outcome.faults().isEmpty()) {
            written.add(file + ": the report");
        }
    }

    @Override
    public List<Fault> faults() {
        return faults;
    }

    @Override
    public JsonOut json() {
        return JsonOut.list(
                proofs,
                proof -> ProofJson.encode(proof, this::witness)
                        .put("trialKits", trials.get(proofs.indexOf(proof)).json()));
    }

    @Override
    public void print(Screen screen) {
        for (int i = 0; i < proofs.size(); i++) {
            ProofText.print(screen, proofs.get(i), this::witness);
            screen.line("");
            screen.line("Tried:");
            screen.wrapped(2, trials.get(i).says());
        }
        if (!written.isEmpty()) {
            screen.line("");
            screen.line("Written:");
            written.forEach(line -> screen.wrapped(2, line));
        }
    }

    /** What somebody has to act on alone. */
    void printOpen(Screen screen) {
        proofs.forEach(proof -> ProofText.printOpen(screen, proof, this::witness));
    }

    private String witness(Answer.Defect defect) {
        String file = files.get(defect);
        return file == null ? "" : file;
    }

    @Override
    public int exit() {
        if (proofs.stream().flatMap(FamilyProof::openDefects).findAny().isPresent()) {
            return Exit.STOPPED;
        }
        boolean open = proofs.stream().anyMatch(ProofResults::isOpen)
                || trials.stream().anyMatch(tried -> !tried.complete());
        return open ? Exit.UNDECIDED : Exit.OK;
    }

    private static boolean isOpen(FamilyProof proof) {
        return proof.answers().stream()
                .anyMatch(answer -> answer instanceof Answer.NotDecided || answer instanceof Answer.Unproved);
    }
}
