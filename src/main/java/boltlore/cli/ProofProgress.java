package boltlore.cli;

import boltlore.proof.Prover;
import java.io.PrintWriter;
import java.util.concurrent.TimeUnit;

/** Says how far a proof has come, once it has taken over a second. */
final class ProofProgress implements Prover.Progress {

    private static final long QUIET_NANOS = TimeUnit.SECONDS.toNanos(1);

    private final PrintWriter aside;
    private final String family;
    private long lastSaid = System.nanoTime();
    private boolean said;

    ProofProgress(PrintWriter aside, String family) {
        this.aside = aside;
        this.family = family;
    }

    @Override
    public void answered(int answered, int all) {
        if (System.nanoTime() - lastSaid > QUIET_NANOS || (said && answered == all)) {
            lastSaid = System.nanoTime();
            said = true;
            aside.print("\r" + family + ": " + answered + " of " + all + " statements" + (answered == all ? "\n" : ""));
            aside.flush();
        }
    }
}
