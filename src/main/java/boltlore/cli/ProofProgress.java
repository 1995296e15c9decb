package boltlore.cli;

import boltlore.findings.Severity;
import boltlore.proof.Answer;
import boltlore.proof.Prover;
import boltlore.proof.Statement;
import java.io.PrintWriter;
import java.util.concurrent.TimeUnit;

/** Says how far proofs have come, once they have taken over a second. */
final class ProofProgress {

    private static final long QUIET_NANOS = TimeUnit.SECONDS.toNanos(1);

    private static final int WIDTH = 60;

    private final PrintWriter aside;
    private long nextNanos = System.nanoTime() + QUIET_NANOS;
    private boolean said;

    ProofProgress(PrintWriter aside) {
        this.aside = aside;
    }

    Prover.Progress of(String family) {
        say(family, "begun", false);
        return new Prover.Progress() {
            @Override
            public void answered(int answered, int all) {
                say(family, answered + " of " + all + " statements", answered == all);
            }

            @Override
            public void found(Answer.Defect defect) {
                tell(family, defect.statement());
            }

            @Override
            public void counting() {
                say(family, "counting the valid orders", said);
            }
        };
    }

    /** Ends the line that is written over, so that what follows stands by itself. */
    void end() {
        if (said) {
            aside.println();
            aside.flush();
        }
    }

    /** Each answer that somebody has to act on as it comes, once the run has become a long one. */
    private void tell(String family, Statement statement) {
        boolean told = statement.kind().severity() != Severity.NOTE;
        if (told && said) {
            String line = family + ": " + statement.title();
            aside.println("\r" + line + " ".repeat(Math.max(0, WIDTH - line.length())));
            aside.flush();
        }
    }

    private void say(String family, String how, boolean last) {
        long now = System.nanoTime();
        if (now >= nextNanos || (said && last)) {
            nextNanos = now + QUIET_NANOS;
            said = true;
            aside.print("\r" + (family + ": " + how + " ".repeat(WIDTH)).substring(0, WIDTH));
            aside.flush();
        }
    }
}
