package boltlore.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Stands in for the program: says its arguments, and does what one of them asks. */
public final class StandIn {

    private StandIn() {}

    public static void main(String... arguments) throws IOException, InterruptedException {
        System.out.println(String.join("|", arguments));
        for (String argument : arguments) {
            if (argument.startsWith("exit=")) {
                System.exit(Integer.parseInt(argument.substring("exit=".length())));
            }
            if (argument.startsWith("wait=")) {
                waitUntilStopped(Path.of(argument.substring("wait=".length())));
            }
            if (argument.equals("columns")) {
                System.out.println("columns=" + System.getenv("COLUMNS"));
            }
            if (argument.equals("echo")) {
                System.in.transferTo(System.out);
            }
        }
    }

    private static void waitUntilStopped(Path log) throws IOException, InterruptedException {
        Runtime.getRuntime().addShutdownHook(new Thread(() -> write(log, "stopped")));
        write(log, "waiting");
        Thread.sleep(60_000);
    }

    private static void write(Path log, String what) {
        try {
            Files.writeString(log, what);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
