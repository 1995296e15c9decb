package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.faults.Fault;
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
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;

/** The proofs of the families that were asked for, and the orders that show their defects. */
final class ProofResults implements ProofTask.Done {

    private final List<FamilyProof> proofs;
    private final List<Witnesses.Witness> witnesses;
    private final IdentityHashMap<Answer.Defect, String> files = new IdentityHashMap<>();

    private final List<String> written = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();

    private ProofResults(List<FamilyProof> proofs, List<Witnesses.Witness> witnesses) {
        this.proofs = proofs;
        this.witnesses = witnesses;
    }

    static ProofResults of(Catalogue catalogue, List<FamilyProof> proofs) {
        return new ProofResults(
                proofs,
                proofs.stream()
                        .flatMap(proof -> Witnesses.of(catalogue, proof).stream())
                        .toList());
    }

    /** Writes an order for each defect that one can show. */
    void writeWitnesses(Path folder) {
        witnesses.forEach(witness -> {
            Order order = witness.order();
            Path file = folder.resolve(order.name() + ".json");
            faults.addAll(WrittenAside.write(file, OrderWriter.write(order).getBytes(StandardCharsets.UTF_8))
                    .faults());
            files.put(witness.defect(), file.toString());
        });
    }

    /** Writes a folder for each family with its statements for other solvers; stops at the first file it cannot write. */
    void writeEvidence(Path folder) {
        for (FamilyProof proof : proofs) {
            Path own = folder.resolve(proof.family().name());
            int statements = Evidence.write(proof, (name, text) -> {
                if (faults.isEmpty()) {
                    faults.addAll(WrittenAside.write(own.resolve(name), text.getBytes(StandardCharsets.UTF_8))
                            .faults());
                }
            });
            written.add(own + ": " + statements + " statements to check again, with 'sh check.sh SOLVER'");
        }
    }

    void writeReport(Catalogue catalogue, Path file) {
        SheetFile sheets = new XlsxWriter()
                .write(ProofReport.of(catalogue, proofs, this::witness))
                .get(0);
        written.add(file + ": the report");
        faults.addAll(WrittenAside.write(file, sheets.content()).faults());
    }

    @Override
    public List<Fault> faults() {
        return faults;
    }

    @Override
    public JsonOut json() {
        return JsonOut.list(proofs, proof -> ProofJson.of(proof, this::witness));
    }

    @Override
    public void print(Screen screen) {
        proofs.forEach(proof -> ProofText.print(screen, proof, this::witness));
        if (!written.isEmpty()) {
            screen.line("");
            screen.line("Written:");
            written.forEach(line -> screen.wrapped(2, line));
        }
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
        boolean open = proofs.stream()
                .flatMap(proof -> proof.answers().stream())
                .anyMatch(answer -> answer instanceof Answer.NotDecided || answer instanceof Answer.Unproved);
        return open ? Exit.UNDECIDED : Exit.OK;
    }
}
