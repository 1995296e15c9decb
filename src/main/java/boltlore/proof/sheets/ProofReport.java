package boltlore.proof.sheets;

import boltlore.catalogue.Catalogue;
import boltlore.proof.Answer;
import boltlore.proof.FamilyProof;
import boltlore.report.Page;
import boltlore.report.Report;
import java.util.List;
import java.util.function.Function;

/** The proofs of a catalogue's families as one workbook. */
public final class ProofReport {

    private ProofReport() {}

    /**
     * The report.
     *
     * @param witness name of the order that shows a defect, or empty
     */
    public static Report compose(
            Catalogue catalogue, List<FamilyProof> proofs, Function<Answer.Defect, String> witness) {
        return Report.named("proof", "Proof of the catalogue")
                .about("Catalogue " + catalogue.revision())
                .by(catalogue.workshop().name())
                .page(Page.named("Summary")
                        .title("Proof of the catalogue")
                        .note("Catalogue " + catalogue.revision()
                                + ". Every statement speaks of all valid orders of its family at once.")
                        .add(SummaryTables.families(proofs))
                        .heading("By kind")
                        .add(SummaryTables.kinds(proofs)))
                .page(Page.named("Defects").landscape().title("Defects").add(DefectTable.compose(proofs, witness)))
                .page(Page.named("Accepted").title("Accepted").add(RestTables.accepted(proofs)))
                .page(Page.named("Notes").title("Notes").add(RestTables.information(proofs)))
                .page(Page.named("Not proved").title("Not proved").add(RestTables.open(proofs)))
                .build();
    }
}
