package boltlore.cli;

import boltlore.catalogue.Accepted;
import boltlore.findings.Severity;
import boltlore.proof.Answer;
import boltlore.proof.FamilyProof;
import boltlore.proof.IdleAcceptance;
import java.util.List;
import java.util.Locale;

/** What a family's file accepts, in words: how it counts, with which reasons, and what is accepted in vain. */
final class AcceptedText {

    private final Screen screen;
    private final FamilyProof proof;

    AcceptedText(Screen screen, FamilyProof proof) {
        this.screen = screen;
        this.proof = proof;
    }

    /** What the proof comes to, in one sentence. */
    void verdict() {
        long stops = open(Severity.STOP);
        long look = open(Severity.CHECK);
        long accepted = proof.acceptedDefects().count();
        String found = stops + look == 0
                ? "No defect was found"
                : count(stops + look, "defect") + (stops == 0 ? ", none of which stops an order" : stops(stops, look));
        screen.wrapped(2, found + (accepted == 0 ? "." : "; " + count(accepted, "finding") + " accepted."));
    }

    private static String stops(long stops, long look) {
        return look == 0 ? "" : ", " + count(stops, "") + "of which stop" + (stops == 1 ? "s" : "") + " orders";
    }

    private static String count(long many, String what) {
        String number = String.format(Locale.ROOT, "%,d ", many);
        return what.isEmpty() ? number : number + what + (many == 1 ? "" : "s");
    }

    private long open(Severity severity) {
        return proof.openDefects()
                .filter(defect -> defect.statement().kind().severity() == severity)
                .count();
    }

    void print() {
        if (open(Severity.CHECK) > 0) {
            screen.line("");
            screen.wrapped(
                    0,
                    "A Check that is right as it is can be accepted: name it in family.json under"
                            + " \"accepted\", as it is named here, with the reason.");
        }
        accepted(proof.acceptedDefects().toList());
        idle(proof.idleAcceptances());
        notJudged(proof.notJudged());
    }

    private void accepted(List<Answer.Defect> accepted) {
        if (accepted.isEmpty()) {
            return;
        }
        screen.line("");
        screen.line("Accepted in family.json:");
        accepted.forEach(this::accepted);
    }

    private void accepted(Answer.Defect defect) {
        String because = proof.acceptance(defect).orElseThrow().because();
        screen.wrapped(2, defect.statement().title());
        screen.wrapped(4, because + " (" + ProofText.touched(defect.touched()) + ")");
    }

    private void idle(List<IdleAcceptance> idle) {
        if (idle.isEmpty()) {
            return;
        }
        screen.line("");
        screen.line("Accepted in family.json but no longer found:");
        idle.forEach(each -> screen.wrapped(2, each.accepted().finding() + ": " + each.why() + "."));
    }

    private void notJudged(List<Accepted> notJudged) {
        if (notJudged.isEmpty()) {
            return;
        }
        screen.line("");
        screen.wrapped(
                0, "Note: accepted in family.json, but found by a trade in kits only; proofs cannot say if it occurs:");
        notJudged.forEach(each -> screen.wrapped(2, each.finding()));
    }
}
