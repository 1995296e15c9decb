package boltlore.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.BooleanSupplier;

/** Where the program starts. It knows no library, so that it can still speak where one is missing. */
public final class Boltlore {

    /** POSIX, sys/stat.h: S_IFMT, S_IFIFO and S_IFSOCK, as Linux and macOS have them. */
    private static final int KIND_OF_FILE = 0xF000;

    private static final int PIPE = 0x1000;
    private static final int SOCKET = 0xC000;

    private Boltlore() {}

    public static void main(String... arguments) {
        // What is written must not hang on the machine's language: some languages have digits of their own.
        Locale.setDefault(Locale.ROOT);
        System.exit(run(utf8(FileDescriptor.out), utf8(FileDescriptor.err), Boltlore::isPiped, arguments));
    }

    /** Whether another program reads the answer: then it cannot be printed where that has ended, as 'head' does. */
    private static boolean isPiped() {
        try {
            int mode = (Integer) Files.getAttribute(Path.of("/dev/fd/1"), "unix:mode") & KIND_OF_FILE;
            return mode == PIPE || mode == SOCKET;
        } catch (IOException | UnsupportedOperationException notKnownHere) {
            return false;
        }
    }

    /** Runs one command as the shell would and returns its exit code. */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        return run(out, err, () -> false, arguments);
    }

    /** @param piped whether the answer is another program's to read, which may end as soon as it has enough */
    static int run(PrintWriter out, PrintWriter err, BooleanSupplier piped, String... arguments) {
        PrintWriter shown = new PrintWriter(new TerminalWriter(out));
        PrintWriter told = new PrintWriter(new TerminalWriter(err));
        int exit = ended(shown, told, arguments);
        boolean lost = shown.checkError() || out.checkError();
        if (lost && piped.getAsBoolean()) {
            exit = exit == Exit.OK ? Exit.READER_GONE : exit;
        } else if (lost) {
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
