package boltlore.book.db;

import boltlore.book.Entry;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** Backups by the database's own means: what SQLite and PostgreSQL copy consistently while desks go on writing. */
public final class Backups {

    private Backups() {}

    /** Writes one into a new file, and looks whether it can be read. */
    public static Outcome<Path> write(Book book, Path file) {
        if (Files.exists(file)) {
            return Outcome.faulty(Fault.of(file.toString(), "a file that exists", "a new file", "Name another."));
        }
        return book.place() instanceof Place.OnServer server
                ? dumped(server, file)
                : copied(book.place(), file).then(entries -> Outcome.sound(file));
    }

    /** Puts one back where no book is; tells its entries. */
    public static Outcome<Long> restore(Path file, Place place) {
        if (!Files.isRegularFile(file)) {
            return Outcome.faulty(Fault.of(file.toString(), "nothing of that name", "a backup", "Check the path."));
        }
        if (place instanceof Place.OnServer server) {
            return empty(server)
                    .then(free -> run(
                            server,
                            "pg_restore",
                            List.of("--exit-on-error", "--single-transaction", "--no-owner", file.toString())))
                    .then(done -> entries(place));
        }
        Path target = ((Place.InFile) place).path();
        if (Files.exists(target)) {
            return Outcome.faulty(Fault.of(
                    target.toString(),
                    "a file that exists",
                    "a place without a book",
                    "Move it aside, or restore to another place with --book."));
        }
        return copied(new Place.InFile(file), target);
    }

    /** SQLite writes a consistent copy while others write, without what erased rows have left. */
    private static Outcome<Long> copied(Place from, Path to) {
        return Book.open(from).then(book -> {
            book.close();
            try (Handle handle = Jdbi.open(Dialect.connections(from))) {
                if (to.toAbsolutePath().getParent() != null) {
                    Files.createDirectories(to.toAbsolutePath().getParent());
                }
                handle.execute("vacuum into ?", to.toString());
            } catch (IOException e) {
                return Outcome.faulty(Trouble.READ_ONLY.at(new Place.InFile(to)));
            } catch (RuntimeException thrown) {
                Trouble trouble = Trouble.of(thrown);
                throw trouble == Trouble.DEFECT ? thrown : new BookLost(trouble.at(new Place.InFile(to)), thrown);
            }
            return entries(new Place.InFile(to));
        });
    }

    private static Outcome<Long> entries(Place place) {
        return Book.open(place).then(opened -> {
            try (Book book = opened) {
                long entries = book.read(
                        reading -> reading.journal().last().map(Entry::number).orElse(0L));
                return Outcome.sound(entries);
            }
        });
    }

    private static Outcome<Boolean> empty(Place.OnServer server) {
        try (Handle handle = Jdbi.open(server.url())) {
            long tables = handle.createQuery(
                            "select count(*) from information_schema.tables where table_name = 'journal'")
                    .mapTo(Long.class)
                    .one();
            return tables == 0
                    ? Outcome.sound(true)
                    : Outcome.faulty(Fault.of(
                            server.shown(),
                            "a database that holds a book",
                            "one without any table",
                            "Make a new database, and name it with --book."));
        } catch (RuntimeException thrown) {
            Trouble trouble = Trouble.of(thrown);
            throw trouble == Trouble.DEFECT ? thrown : new BookLost(trouble.at(server), thrown);
        }
    }

    private static Outcome<Path> dumped(Place.OnServer server, Path file) {
        return run(server, "pg_dump", List.of("--format=custom", "--no-owner", "--file=" + file))
                .then(done -> Outcome.sound(file));
    }

    /** The server's own program; what is secret goes by its environment, where other users do not see it. */
    private static Outcome<Boolean> run(Place.OnServer server, String program, List<String> words) {
        URI uri = URI.create(server.url().substring("jdbc:".length()));
        Map<String, String> asked = new TreeMap<>();
        if (uri.getRawQuery() != null) {
            for (String pair : uri.getRawQuery().split("&", -1)) {
                String[] named = pair.split("=", 2);
                asked.put(named[0], named.length < 2 ? "" : URLDecoder.decode(named[1], StandardCharsets.UTF_8));
            }
        }
        List<String> command = new ArrayList<>(List.of(program, "--dbname=" + database(uri)));
        command.addAll(words);
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("PGHOST", uri.getHost() == null ? "localhost" : uri.getHost());
        builder.environment().put("PGPORT", Integer.toString(uri.getPort() < 0 ? 5432 : uri.getPort()));
        if (asked.containsKey("user")) {
            builder.environment().put("PGUSER", asked.get("user"));
        }
        if (asked.containsKey("password")) {
            builder.environment().put("PGPASSWORD", asked.get("password"));
        }
        return ran(builder, program);
    }

    private static String database(URI uri) {
        String path = uri.getPath();
        return path == null || path.length() < 2 ? "postgres" : path.substring(1);
    }

    private static Outcome<Boolean> ran(ProcessBuilder builder, String program) {
        try {
            Process process = builder.start();
            process.getOutputStream().close();
            String told;
            try (InputStream said = process.getInputStream()) {
                told = new String(said.readAllBytes(), StandardCharsets.UTF_8).strip();
            }
            return process.waitFor() == 0
                    ? Outcome.sound(true)
                    : Outcome.faulty(Fault.of(program, "'" + told.replace('\n', ' ') + "'", "that it succeeds", ""));
        } catch (IOException e) {
            return Outcome.faulty(Fault.of(
                    program,
                    "a program that is not installed here",
                    "PostgreSQL's own program of that name",
                    "Install PostgreSQL's client programs, or take 'boltlore book export', which needs none."));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Outcome.faulty(Fault.of(program, "that it was interrupted", "that it succeeds", ""));
        }
    }
}
