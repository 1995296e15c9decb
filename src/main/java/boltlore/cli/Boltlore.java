package boltlore.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Where the program starts. It knows no library, so that it can still speak where one is missing. */
public final class Boltlore {

    private Boltlore() {}

    public static void main(String... arguments) {
        // What is written must not hang on the machine's language: some languages have digits of their own.
        Locale.setDefault(Locale.ROOT);
        System.exit(run(utf8(FileDescriptor.out), utf8(FileDescriptor.err), arguments));
    }

    /** Runs one command as the shell would and returns its exit code. */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        PrintWriter shown = new PrintWriter(new TerminalWriter(out));
        PrintWriter told = new PrintWriter(new TerminalWriter(err));
        int exit = ended(shown, told, arguments);
        boolean lost = shown.checkError() || out.checkError();
        if (lost) {
            told.println("The answer could not be printed: the output is closed or full.");
            exit = exit == Exit.OK ? Exit.NOT_WRITTEN : exit;
        }
        told.flush();
        return exit;
    }

    private static int ended(PrintWriter out, PrintWriter err, String... arguments) {
        if (arguments.length == 1 && (arguments[0].equals("--version") || arguments[0].equals("-V"))) {
            out.println(Release.name());
            return Exit.OK;
        }
        try {
            return CommandLineParser.execute(out, err, arguments);
        } catch (StackOverflowError | OutOfMemoryError | LinkageError failure) {
            return Defect.told(err, failure);
        }
    }

    private static PrintWriter utf8(FileDescriptor stream) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(stream), StandardCharsets.UTF_8));
    }
}
