package boltlore.cli;

import boltlore.proof.Prover;
import java.io.PrintWriter;
import java.util.concurrent.TimeUnit;

/** Says how far proofs have come, once they have taken over a second. */
final class ProofProgress {

    private static final long QUIET_NANOS = TimeUnit.SECONDS.toNanos(1);

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

    private void say(String family, String how, boolean last) {
        long now = System.nanoTime();
        if (now >= nextNanos || (said && last)) {
            nextNanos = now + QUIET_NANOS;
            said = true;
            aside.print("\r" + (family + ": " + how + " ".repeat(60)).substring(0, 60));
            aside.flush();
        }
    }
}
