package boltlore.cli;

import java.io.PrintWriter;

/** A failure that no input may cause: told in a sentence, with the place for whoever mends it, never as a trace. */
final class Defect {

    private Defect() {}

    static int told(PrintWriter err, Throwable failure) {
        err.println("boltlore: " + says(failure));
        return Exit.DEFECT;
    }

    private static String says(Throwable failure) {
        if (failure instanceof OutOfMemoryError) {
            return "this needs more memory than it was given. Set BOLTLORE_JVM_FLAGS=-Xmx1g and run it again.";
        }
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof ClassNotFoundException
                    || cause instanceof ClassFormatError
                    || cause instanceof IncompatibleClassChangeError) {
                return "a library is missing or damaged (" + cause.getMessage() + "). Install Boltlore again.";
            }
        }
        StackTraceElement[] trace = failure.getStackTrace();
        return "internal error, not of your input: "
                + failure.getClass().getSimpleName()
                + (failure.getMessage() == null ? "" : ", " + failure.getMessage())
                + " (at " + (trace.length == 0 ? "an unknown place" : trace[0].toString())
                + "). Nothing was half-written. Please report it with the command you gave.";
    }
}
