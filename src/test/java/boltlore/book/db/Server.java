package boltlore.book.db;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/**
 * A PostgreSQL of the tests' own: made in a temporary folder, started on a free port of this machine, stopped and deleted
 * when the tests end. It starts for the first test that asks for it; each test gets a database of its own.
 */
public final class Server {

    private static final AtomicInteger DATABASES = new AtomicInteger();

    /** Setting a server up takes two seconds, on a machine with much else to do more than a minute. */
    private static final int LONGEST_MIN = 5;

    private static Server running;

    private final Path programs;
    private final Path folder;
    private final int port;

    private Server(Path programs, Path folder, int port) {
        this.programs = programs;
        this.folder = folder;
        this.port = port;
    }

    /** The one server of this run. */
    public static synchronized Server running() {
        if (running == null) {
            running = begun();
            Runtime.getRuntime().addShutdownHook(new Thread(running::delete, "stop the tests' server"));
        }
        return running;
    }

    /** A server that a test may stop and start as it likes. */
    public static Server begun() {
        try {
            Path folder = Files.createTempDirectory("boltlore-pg");
            int port;
            try (ServerSocket free = new ServerSocket(0)) {
                port = free.getLocalPort();
            }
            Server server = new Server(programs(), folder, port);
            server.make();
            server.start();
            return server;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path programs() throws IOException {
        try (Stream<Path> versions = Files.list(Path.of("/usr/lib/postgresql"))) {
            return versions.max(Comparator.naturalOrder()).orElseThrow().resolve("bin");
        }
    }

    private void make() throws IOException {
        if (isRoot()) {
            call("chown", "postgres", folder.toString());
        }
        run("initdb", "-D", data(), "-U", "boltlore", "--auth=trust", "--encoding=UTF8", "--locale=C.UTF-8", "-N");
    }

    private String data() {
        return folder.resolve("data").toString();
    }

    public void start() {
        String options = "-p " + port + " -c listen_addresses=127.0.0.1 -c unix_socket_directories=" + folder
                + " -c shared_buffers=32MB -c max_connections=120";
        run("pg_ctl", "-D", data(), "-w", "-l", folder.resolve("log").toString(), "-o", options, "start");
    }

    /** As if the machine were switched off. */
    public void stop() {
        run("pg_ctl", "-D", data(), "-w", "-m", "immediate", "stop");
    }

    public void delete() {
        try {
            stop();
        } catch (IllegalStateException alreadyStopped) {
            // A test may have stopped it.
        }
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** JDBC URL of an empty database. */
    public String database() {
        String name = "book" + DATABASES.incrementAndGet();
        run("createdb", "-h", "127.0.0.1", "-p", Integer.toString(port), "-U", "boltlore", name);
        return "jdbc:postgresql://127.0.0.1:" + port + "/" + name + "?user=boltlore";
    }

    /** Says something to a database that {@link #database} has made, as its owner may. */
    public void say(String url, String statement) {
        String name = url.replaceFirst("^.*/(book\\d+)\\?.*$", "$1");
        run(
                "psql",
                "-h",
                "127.0.0.1",
                "-p",
                Integer.toString(port),
                "-U",
                "boltlore",
                "-v",
                "ON_ERROR_STOP=1",
                "-qc",
                statement,
                name);
    }

    private void run(String program, String... words) {
        List<String> command = new ArrayList<>();
        if (isRoot()) {
            command.addAll(List.of("runuser", "-u", "postgres", "--"));
        }
        command.add(programs.resolve(program).toString());
        command.addAll(List.of(words));
        call(command.toArray(String[]::new));
    }

    private static boolean isRoot() {
        return System.getProperty("user.name").equals("root");
    }

    private static void call(String... command) {
        try {
            Path said = Files.createTempFile("boltlore-pg", ".log");
            Process process = new ProcessBuilder(command)
                    .directory(Path.of("/").toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(said.toFile())
                    .start();
            boolean ended = process.waitFor(LONGEST_MIN, TimeUnit.MINUTES);
            String told = Files.readString(said);
            Files.delete(said);
            if (!ended || process.exitValue() != 0) {
                throw new IllegalStateException(String.join(" ", command) + ": " + told);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
