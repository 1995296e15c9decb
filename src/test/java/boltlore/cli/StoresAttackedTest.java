package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Rooms at the book under attack")
class StoresAttackedTest {

    @TempDir
    private static Path once;

    @TempDir
    private Path folder;

    private DeskAt desk = new DeskAt("");

    /** Two orders that both want the one compressor. */
    @BeforeAll
    static void begun() throws IOException {
        DeskAt first = DeskAt.file(once);
        for (String order : List.of("BL-1001", "BL-9001")) {
            first.done("order", "draft", DeskAt.order(once, "\"order\": \"BL-1001\"", "\"order\": \"" + order + "\""));
            first.done("order", "quote", order);
            first.done("order", "confirm", order);
        }
        first.done("stock", "receive", "AC-COMP", "1", "--serial", "THE-LAST");
    }

    @BeforeEach
    void open() throws IOException {
        desk = DeskAt.file(folder);
        Files.copy(Path.of(DeskAt.file(once).book()), Path.of(desk.book()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"file", "server"})
    @DisplayName("of two orders that want the last piece at the same time one gets it, the other a clear word")
    void lastPiece(String kept) throws Exception {
        DeskAt at = desk;
        if (kept.equals("server")) {
            at = DeskAt.server();
            desk.done("book", "move", at.book());
        }
        DeskAt there = at;
        ExecutorService pool = Executors.newFixedThreadPool(2);
        List<Callable<Ran>> desks = Stream.of("BL-1001", "BL-9001")
                .<Callable<Ran>>map(order -> () -> there.run("pick", "take", order, "AC-COMP", "--serial", "THE-LAST"))
                .toList();
        List<Ran> ran = new ArrayList<>();
        for (Future<Ran> each : pool.invokeAll(desks)) {
            ran.add(each.get());
        }
        pool.shutdown();
        assertThat(ran).extracting(Ran::exit).containsExactlyInAnyOrder(Exit.OK, Exit.FAULTS);
        assertThat(ran.stream().map(Ran::err).collect(Collectors.joining()).replaceAll("\\s+", " "))
                .contains("AC-COMP");
        assertThat(there.done("recall", "--serial", "THE-LAST")).contains("1 kit.");
        assertThat(there.done("book", "check")).contains("all sums are as it says");
    }

    static Stream<String> hostile() {
        return Stream.of(
                "'; drop table stock; --", "../../etc/passwd", "\u001B[31mred", "\uD800", "9".repeat(1_000_000));
    }

    @ParameterizedTest
    @MethodSource("hostile")
    @DisplayName("hostile text in the fields of the rooms is refused in a sentence, or kept as text")
    void text(String text) {
        List<List<Object>> commands = List.of(
                List.of("stock", "lacking", text),
                List.of("stock", "receive", "AC-COMP", "1", "--serial", text, "--bin", text),
                List.of("stock", "receive", "AC-COMP", text),
                List.of("order", "list", "--sort", text, "--where", text + "=" + text),
                List.of("coating", "list", "--finish", text, "--load", text, "--order", text),
                List.of("coating", "mask", text),
                List.of("rack", "add", text, text, "12"),
                List.of("rack", "heat", text, text),
                List.of("record", "list", text),
                List.of("purchase", "print", text),
                List.of("pick", "take", "BL-1001", "AC-COMP", "--serial", text),
                List.of("pick", "count", "BL-1001", text, "AC-COMP", "1"),
                List.of("change", "carry", text, "1"),
                List.of("built", "read", "BL-1001", text, "1", text),
                List.of("built", "read", "BL-1001", "gap", text, "mm"),
                List.of("person", "add", text),
                List.of("order", "list", "--clock", text));
        for (List<Object> command : commands) {
            Ran ran = desk.run(command.toArray());
            String which = command.get(0) + " " + command.get(1);
            assertThat(ran.exit())
                    .as(which + " "
                            + ran.err().substring(0, Math.min(600, ran.err().length())))
                    .isIn(Exit.OK, Exit.USAGE, Exit.FAULTS);
            assertThat(ran.err().length()).as(which).isLessThan(4000);
            assertThat(ran.err() + ran.out()).as(which).doesNotContain("Exception", "\u001B");
        }
        assertThat(desk.done("book", "check")).contains("The journal is whole");
    }

    static Stream<String> falsified() {
        return Stream.of(
                "a line less", "two lines changed places", "a content changed", "a kind nobody knows", "cut off");
    }

    @ParameterizedTest
    @MethodSource
    @DisplayName("an export that somebody has falsified is refused, and leaves no book behind")
    void falsified(String how) throws IOException {
        Path export = folder.resolve("book.jsonl");
        desk.done("book", "export", export);
        List<String> lines = new ArrayList<>(Files.readAllLines(export));
        int entry = 0;
        while (!lines.get(entry).startsWith("{\"entry\": 4,")) {
            entry++;
        }
        switch (how) {
            case "a line less" -> lines.remove(entry);
            case "two lines changed places" -> {
                int next = entry + 1;
                while (!lines.get(next).startsWith("{\"entry\"")) {
                    next++;
                }
                java.util.Collections.swap(lines, entry, next);
            }
            case "a kind nobody knows" ->
                lines.set(entry, lines.get(entry).replaceFirst("\"kind\": \"[^\"]*\"", "\"kind\": \"money given\""));
            case "a content changed" -> {
                int content = 0;
                while (!lines.get(content).contains("\"content\"")
                        || lines.get(content).startsWith("{\"entry\"")) {
                    content++;
                }
                String line = lines.get(content);
                int at = line.length() / 2;
                lines.set(
                        content, line.substring(0, at) + (line.charAt(at) == 'A' ? 'B' : 'A') + line.substring(at + 1));
            }
            default -> lines.set(lines.size() - 1, lines.get(lines.size() - 1).substring(0, 20));
        }
        Path false_ = Files.write(folder.resolve("false.jsonl"), lines);
        DeskAt other = new DeskAt(folder.resolve("other.db").toString());
        String refused = other.refused("book", "import", false_);
        assertThat(refused).as(how).contains("false.jsonl").doesNotContain("Exception");
        Ran empty = other.run("order", "list");
        assertThat(empty.out()).as(how).doesNotContain("BL-1001,");
    }

    @Test
    @DisplayName("a second run over the first changes nothing that it should not")
    void twice() throws IOException {
        String before = desk.exported(folder);
        assertThat(desk.refused("order", "confirm", "BL-1001")).contains("expected a quoted order");
        assertThat(desk.refused("stock", "receive", "AC-COMP", "1", "--serial", "THE-LAST"))
                .contains("which came in before");
        assertThat(desk.exported(folder)).isEqualTo(before);
        desk.done("coating", "queue", "BL-1001");
        String queued = desk.exported(folder);
        desk.done("coating", "queue", "BL-1001");
        assertThat(desk.exported(folder)).isEqualTo(queued);
    }
}
