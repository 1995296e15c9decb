package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.exports.SheetSet;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import boltlore.proof.FamilyProof;
import boltlore.proof.Prover;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;

/** Proves or refutes every statement about some families. */
record ProvingTask(
        Catalogue catalogue,
        List<Family> families,
        ProofFiles files,
        BiFunction<Path, List<SheetSet>, Outcome<List<Path>>> write)
        implements ProofTask {

    @Override
    public ProofResults done(Deadline until, ProofProgress progress) {
        CatalogueSession session = CatalogueSession.of(catalogue);
        List<FamilyProof> proofs = new ArrayList<>();
        List<TrialKits> trials = new ArrayList<>();
        for (Family family : families) {
            FamilyProof proof = Prover.prove(catalogue, family, ProvedKinds.all(), until, progress.of(family.name()));
            TrialKits tried = TrialKits.of(session, proof, until);
            trials.add(tried);
            proofs.add(tried.with(proof));
        }
        ProofResults results = ProofResults.of(catalogue, proofs, trials);
        if (files.witnesses != null) {
            results.writeWitnesses(files.witnesses, write);
        }
        if (files.evidence != null) {
            results.writeEvidence(files.evidence, write);
        }
        if (files.report != null) {
            results.writeReport(catalogue, files.report);
        }
        return results;
    }
}
