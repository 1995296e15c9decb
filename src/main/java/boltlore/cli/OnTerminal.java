package boltlore.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Whether what is told aside, on the second stream, is read by a person as it comes. */
final class OnTerminal {

    /** Where Linux says what the second stream of this process is: a device, a pipe or a file. */
    private static final Path ASIDE = Path.of("/proc/self/fd/2");

    /** 'yes' tells it wherever that stream goes: to a program that watches the run. */
    private static final String ASKED_FOR = "BOLTLORE_PROGRESS";

    private OnTerminal() {}

    static boolean asideIsOne() {
        return "yes".equals(System.getenv(ASKED_FOR)) || isTerminal(ASIDE);
    }

    /** Of another system than Linux, whether the program talks to a terminal at all. */
    @SuppressWarnings("SystemConsoleNull") // it runs on Java 17; a later one shows progress where it need not
    static boolean isTerminal(Path stream) {
        try {
            String device = Files.readSymbolicLink(stream).toString();
            return device.startsWith("/dev/pts/") || device.startsWith("/dev/tty") || device.equals("/dev/console");
        } catch (IOException | UnsupportedOperationException | InvalidPathException noLink) {
            return System.console() != null;
        }
    }
}
