package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.book.db.Server;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the server says is PostgreSQL's own word (its manual, appendix A: 53100 disk full, 57P01 shut down by its keeper). */
@DisplayName(
        "Where a server is in trouble in the middle of a command, a sentence says what to do, and nothing is changed")
class ServerInTroubleTest {

    private static final String ORDER = "catalog/orders/bl-1001.json";

    @TempDir
    private Path folder;

    private DeskAt desk;

    @BeforeEach
    void open() {
        desk = DeskAt.server();
        desk.done("order", "draft", ORDER);
    }

    private void say(String statement) {
        Server.running().say(desk.book(), statement);
    }

    @ParameterizedTest
    @CsvSource({
        "raise exception 'No space left on device' using errcode = '53100', room",
        "perform pg_terminate_backend(pg_backend_pid()), a database that cannot be reached"
    })
    @DisplayName("a disk that is full, and a connection that is cut")
    void middle(String trouble, String told) throws IOException {
        String before = desk.exported(folder);
        say("create function trouble() returns trigger language plpgsql as $$ begin " + trouble
                + "; return null; end $$; create trigger trouble after insert on journal execute function trouble()");
        Ran ran = desk.run("order", "draft", "catalog/orders/bl-1003.json");
        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.NO_BOOK);
        assertThat(ran.err().replaceAll("\\s+", " "))
                .contains(told, "nothing was written")
                .doesNotContain("Exception", "Tilda");
        say("drop trigger trouble on journal");
        assertThat(desk.exported(folder)).isEqualTo(before);
        desk.done("order", "draft", "catalog/orders/bl-1003.json");
    }

    @Test
    @DisplayName("a database that may only be read is read, and not written")
    void readOnly() throws IOException {
        String before = desk.exported(folder);
        String name = desk.book().replaceFirst("^.*/(book\\d+)\\?.*$", "$1");
        say("alter database " + name + " set default_transaction_read_only = on");
        assertThat(desk.done("order", "list")).contains("BL-1001");
        Ran ran = desk.run("order", "draft", "catalog/orders/bl-1003.json");
        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.NO_BOOK);
        assertThat(ran.err().replaceAll("\\s+", " "))
                .contains("may only be read")
                .doesNotContain("Exception");
        assertThat(desk.exported(folder)).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"'; drop table journal; --", "a\u0000b", "\u001B[31mred", "\uD800", "1 MB"})
    @DisplayName("hostile text is refused in a sentence, or kept as text")
    void text(String typed) {
        String text = typed.equals("1 MB") ? "x".repeat(1_000_000) : typed;
        for (List<Object> command : List.<List<Object>>of(
                List.of("order", "draft", "catalog/orders/bl-1003.json", "--reason", text),
                List.of("order", "show", text),
                List.of("built", "note", "BL-1001", "concession", text, text),
                List.of("recall", "--serial", text, "--lot", text),
                List.of("stock", "receive", "AC-COMP", "1", "--serial", text, "--bin", text),
                List.of("person", "change", "P-2", "--name", text))) {
            Ran ran = desk.run(command.toArray());
            assertThat(ran.exit()).as(command.get(0) + " " + command.get(1)).isIn(Exit.OK, Exit.USAGE, Exit.FAULTS);
            assertThat(ran.err().length()).isLessThan(4000);
            assertThat(ran.err() + ran.out()).doesNotContain("Exception", "\u001B", "\u0000");
        }
        assertThat(desk.done("book", "check")).contains("The journal is whole");
    }
}
