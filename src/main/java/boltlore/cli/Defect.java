package boltlore.cli;

import boltlore.measure.Legible;
import java.io.PrintWriter;

/** A failure that no input may cause: told in a sentence, with the place for whoever mends it, never as a trace. */
final class Defect {

    private Defect() {}

    static int told(PrintWriter err, Throwable defect) {
        if (defect instanceof OutOfMemoryError) {
            err.println("boltlore: this needs more memory than it was given. Set BOLTLORE_JVM_FLAGS=-Xmx1g and run"
                    + " it again.");
            return Exit.DEFECT;
        }
        StackTraceElement[] trace = defect.getStackTrace();
        String place = trace.length == 0 ? "an unknown place" : trace[0].toString();
        err.println("boltlore: a defect of the program, not of your input: "
                + defect.getClass().getSimpleName()
                + (defect.getMessage() == null ? "" : ", " + Legible.line(defect.getMessage()))
                + " (at " + place + "). Nothing was half-written. Please report it with the command you gave.");
        return Exit.DEFECT;
    }
}
