package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import boltlore.book.db.Server;
import boltlore.book.db.Writer;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sqlite.SQLiteDataSource;

@DisplayName("Where the book is in trouble, a sentence says what to do, and nothing is changed")
class BookInTroubleTest {

    private static final int COPIES = 20;
    private static final int PAUSE_MS = 100;
    private static final String ORDER = "catalog/orders/bl-1001.json";

    @TempDir
    private static Path once;

    @TempDir
    private Path folder;

    private DeskAt desk;

    @BeforeAll
    static void begun() {
        DeskAt.file(once).done("order", "draft", ORDER);
    }

    @BeforeEach
    void open() throws IOException {
        desk = DeskAt.file(folder);
        Files.copy(Path.of(DeskAt.file(once).book()), Path.of(desk.book()));
    }

    private static void noBook(Ran ran, String told) {
        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.NO_BOOK);
        assertThat(ran.err().replaceAll("\\s+", " ")).contains(told).doesNotContain("Exception");
    }

    @Test
    @DisplayName("no book: to ask does not make one")
    void none() {
        DeskAt nowhere = new DeskAt(folder.resolve("none/book.db").toString());
        noBook(nowhere.run("order", "list"), "'boltlore order draft ORDER' begins one");
        assertThat(folder.resolve("none")).doesNotExist();
    }

    @Test
    @DisplayName("a file that is no book")
    void noBookAtAll() throws IOException {
        Path text = Files.writeString(folder.resolve("letter.txt"), "Dear customer,\n".repeat(100));
        noBook(new DeskAt(text.toString()).run("order", "list"), "something that is no book, or a damaged one");
        assertThat(Files.readString(text)).startsWith("Dear customer");
        noBook(new DeskAt(folder.toString()).run("order", "list"), "something that is no file");
    }

    @Test
    @DisplayName("a damaged book is not made worse")
    void damaged() throws IOException {
        byte[] bytes = Files.readAllBytes(Path.of(desk.book()));
        java.util.Arrays.fill(bytes, 4096, bytes.length, (byte) 0x5A);
        Files.write(Path.of(desk.book()), bytes);
        noBook(desk.run("order", "draft", "catalog/orders/bl-1002.json"), "restore the last backup beside it");
        assertThat(Files.readAllBytes(Path.of(desk.book()))).isEqualTo(bytes);
    }

    /** SQLite treats a file as read-only whose write version is above 2 (its file format, 1.3, 'file format version'). */
    @Test
    @DisplayName("a book that may only be read is read, and not written")
    void readOnly() throws IOException {
        byte[] bytes = Files.readAllBytes(Path.of(desk.book()));
        bytes[18] = 3;
        Files.write(Path.of(desk.book()), bytes);
        assertThat(desk.done("order", "list")).contains("BL-1001");
        noBook(desk.run("order", "draft", "catalog/orders/bl-1002.json"), "a book that may only be read");
    }

    @Test
    @DisplayName("a disk without room, here a limit on the size of files, loses the command and nothing else")
    void full() throws Exception {
        String before = desk.exported(folder);
        String library = "/org/sqlite/native/Linux/x86_64/";
        assumeThat(System.getProperty("os.arch")).isEqualTo("amd64");
        try (InputStream in = SQLiteDataSource.class.getResourceAsStream(library + "libsqlitejdbc.so")) {
            Files.copy(in, folder.resolve("libsqlitejdbc.so"));
        }
        Process process = limited(60, "-Dorg.sqlite.lib.path=" + folder, "-Dorg.sqlite.lib.name=libsqlitejdbc.so");
        String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(told).isEqualTo(Exit.NO_BOOK);
        assertThat(told.replaceAll("\\s+", " ")).contains("nothing was written").doesNotContain("Exception");
        assertThat(desk.exported(folder)).isEqualTo(before);
        desk.done("order", "draft", "catalog/orders");
    }

    @Test
    @DisplayName("no room to unpack the file database's own library")
    void noLibrary() throws Exception {
        String before = desk.exported(folder);
        Process process = limited(100);
        String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(told).isEqualTo(Exit.NO_BOOK);
        assertThat(told.replaceAll("\\s+", " ")).contains("Make room there, or name another folder");
        assertThat(desk.exported(folder)).isEqualTo(before);
    }

    /** A desk whose process may write no file longer than so many blocks of 1 KiB. */
    private Process limited(long blocks, String... properties) throws IOException {
        String command = "ulimit -f " + blocks + "; exec '" + System.getProperty("java.home") + "/bin/java' -cp '"
                + System.getProperty("java.class.path") + "' -Xshare:auto -XX:-UsePerfData "
                + String.join(" ", properties) + " boltlore.cli.Boltlore order draft catalog/orders --book '"
                + desk.book()
                + "' --by Kim";
        return new ProcessBuilder("bash", "-c", command)
                .redirectErrorStream(true)
                .start();
    }

    @Test
    @DisplayName("a copy of the file of a running book is a whole book up to some entry")
    void copied() throws Exception {
        Process writing = new ProcessBuilder(
                        System.getProperty("java.home") + "/bin/java",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Writer.class.getName(),
                        desk.book(),
                        "other")
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        int whole = 0;
        for (int i = 0; i < COPIES; i++) {
            TimeUnit.MILLISECONDS.sleep(PAUSE_MS);
            Path copy = Files.createTempDirectory(folder, "copy").resolve("book.db");
            for (String ending : List.of("-wal", "")) {
                if (Files.exists(Path.of(desk.book() + ending))) {
                    try {
                        Files.copy(
                                Path.of(desk.book() + ending),
                                Path.of(copy + ending),
                                StandardCopyOption.REPLACE_EXISTING);
                    } catch (java.nio.file.NoSuchFileException closedMeanwhile) {
                        // The last desk that leaves takes the file away.
                    }
                }
            }
            Ran checked = new DeskAt(copy.toString()).run("book", "check");
            // Whole, or told as what it is; never another answer.
            assertThat(checked.exit()).as(checked.toString()).isIn(Exit.OK, Exit.FAULTS, Exit.NO_BOOK);
            assertThat(checked.err()).doesNotContain("Exception");
            whole += checked.exit() == Exit.OK ? 1 : 0;
        }
        writing.destroyForcibly().waitFor();
        assertThat(whole).isPositive();
        assertThat(desk.done("book", "check")).contains("The journal is whole");
    }

    @Test
    @DisplayName("a backup that is written while a desk writes is a whole book, and goes back into an empty place only")
    void backup() throws Exception {
        Path file = folder.resolve("backup.db");
        backedUpWhileWriting(desk, file);
        assertThat(desk.refused("book", "backup", file)).contains("a file that exists");
        assertThat(desk.refused("book", "restore", file)).contains("a place without a book");
        restored(new DeskAt(folder.resolve("restored/book.db").toString()), file, desk);
    }

    @Test
    @DisplayName("so is a server's, which goes back into an empty database only")
    void backupOfServer() throws Exception {
        assumeThat(Path.of("/usr/bin/pg_dump")).exists();
        DeskAt server = DeskAt.server();
        server.done("order", "draft", ORDER);
        Path file = folder.resolve("backup.dump");
        backedUpWhileWriting(server, file);
        assertThat(server.refused("book", "restore", file)).contains("a database that holds a book");
        restored(DeskAt.server(), file, server);
    }

    private static void backedUpWhileWriting(DeskAt desk, Path file) throws Exception {
        ExecutorService pool = Executors.newSingleThreadExecutor();
        Future<?> writing = pool.submit(() -> desk.done("order", "draft", "catalog/orders"));
        desk.done("book", "backup", file);
        writing.get();
        pool.shutdown();
    }

    private void restored(DeskAt empty, Path file, DeskAt desk) throws IOException {
        empty.done("book", "restore", file);
        assertThat(empty.done("book", "check")).contains("The journal is whole");
        assertThat(desk.exported(folder)).contains(entriesOf(empty.exported(folder)));
    }

    private static String entriesOf(String export) {
        return String.join(
                "\n",
                export.lines().filter(line -> !line.startsWith("{\"personal\"")).toList());
    }

    @Test
    @DisplayName("a server that goes away, and comes back")
    void goneAndBack() throws IOException {
        Server server = Server.begun();
        try {
            DeskAt at = new DeskAt(server.database());
            at.done("order", "draft", ORDER);
            String before = at.exported(folder);
            server.stop();
            noBook(at.run("order", "draft", "catalog/orders"), "a database that cannot be reached, or went away");
            server.start();
            assertThat(at.exported(folder)).isEqualTo(before);
            at.done("order", "draft", "catalog/orders");
        } finally {
            server.delete();
        }
    }

    @Test
    @DisplayName("a server that was never there, told without user and password")
    void never() {
        Ran ran = new DeskAt("jdbc:postgresql://127.0.0.1:1/book?user=kim&password=secret").run("order", "list");
        noBook(ran, "jdbc:postgresql://127.0.0.1:1/book");
        assertThat(ran.err()).doesNotContain("secret").doesNotContain("kim");
        noWay(new DeskAt("jdbc:mysql://host/book?password=secret").run("order", "list"));
    }

    private static void noWay(Ran ran) {
        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err())
                .contains("a URL that begins with jdbc:postgresql:")
                .doesNotContain("secret");
    }

    static Stream<String> books() {
        return Stream.of("file", "server");
    }

    @ParameterizedTest
    @MethodSource("books")
    @DisplayName("of several desks that fit one and the same piece at the same time one does")
    void lastPiece(String kept) throws Exception {
        DeskAt at = kept.equals("file") ? desk : DeskAt.server();
        at.done("order", "draft", ORDER);
        at.done("order", "quote", "BL-1001");
        at.done("order", "confirm", "BL-1001");
        ExecutorService pool = Executors.newFixedThreadPool(4);
        List<Callable<Integer>> desks = IntStream.range(0, 4)
                .<Callable<Integer>>mapToObj(
                        i -> () -> at.run("built", "fit", "BL-1001", "--part", "CH-11X", "--serial", "THE-LAST")
                                .exit())
                .toList();
        List<Integer> exits = new ArrayList<>();
        for (Future<Integer> exit : pool.invokeAll(desks)) {
            exits.add(exit.get());
        }
        pool.shutdown();
        assertThat(exits).containsExactlyInAnyOrder(Exit.OK, Exit.FAULTS, Exit.FAULTS, Exit.FAULTS);
        assertThat(at.done("recall", "--serial", "THE-LAST")).contains("1 kit.");
    }

    static Stream<String> hostile() {
        return Stream.of(
                "'; drop table journal; --",
                "\" or 1=1 --",
                "../../../../etc/passwd",
                "a\u0000b",
                "\u001B[31mred",
                "\u202Eevil",
                "line\nbreak",
                "\uD800",
                "${number}",
                "%s%n",
                "x".repeat(1_000_000),
                "");
    }

    @ParameterizedTest
    @MethodSource("hostile")
    @DisplayName("hostile text in any field is refused in a sentence, or kept as text")
    void text(String text) throws IOException {
        List<List<Object>> commands = List.of(
                List.of("order", "draft", ORDER, "--reason", text),
                List.of("order", "show", text),
                List.of("order", "quote", text),
                List.of("order", "move", "BL-1001", "lost", "--reason", text),
                List.of("built", "fit", text, "--part", text, "--serial", text, "--lot", text, "--heat", text),
                List.of("built", "note", "BL-1001", "reading", text, text),
                List.of("built", "vehicle", "BL-1001", text),
                List.of("change", "list", text),
                List.of("recall", "--part", text),
                List.of("recall", "--serial", text, "--lot", text, "--heat", text, "--revision", text),
                List.of("recall", "--drawing", text, "--issue", text),
                List.of("recall", "--chassis", text),
                List.of("person", "change", "P-2", "--name", text),
                List.of("person", "change", "P-2", "--detail", "telephone=" + text),
                List.of("person", "change", text, "--detail", text + "=" + text));
        for (List<Object> command : commands) {
            Ran ran = desk.run(command.toArray());
            assertThat(ran.exit()).as(command + "\n" + ran).isIn(Exit.OK, Exit.USAGE, Exit.FAULTS);
            assertThat(ran.err().length())
                    .as(command.get(0) + " " + command.get(1))
                    .isLessThan(4000);
            assertThat(ran.err() + ran.out()).doesNotContain("Exception", "\u001B", "\u202E", "\u0000");
        }
        Ran by = Ran.boltlore("order", "draft", "catalog/orders/bl-1002.json", "--book", desk.book(), "--by", text);
        assertThat(by.exit()).as(by.toString()).isIn(Exit.OK, Exit.FAULTS);
        assertThat(desk.done("book", "check")).contains("The journal is whole");
        DeskAt other = new DeskAt(folder.resolve("other.db").toString());
        Path export = folder.resolve("all.jsonl");
        desk.done("book", "export", export);
        other.done("book", "import", export);
        assertThat(other.exported(folder)).isEqualTo(Files.readString(export));
    }
}
