package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("ask")
class AskCommandTest {

    private static final String[] MOST = {
        "body-era=late",
        "drive-side=left",
        "market=europe",
        "supply=three-phase-16",
        "language=en",
        "export=none",
        "colour=black",
        "cover-colour=cream",
        "charger=seven",
        "heater=water"
    };

    @TempDir
    Path folder;

    private Ran ask(String typed, Object... more) {
        Object[] all = new Object[MOST.length + more.length + 4];
        all[0] = "ask";
        all[1] = "pannier-van";
        System.arraycopy(MOST, 0, all, 2, MOST.length);
        all[MOST.length + 2] = "--out";
        all[MOST.length + 3] = folder.resolve("new.json");
        System.arraycopy(more, 0, all, MOST.length + 4, more.length);
        InputStream terminal = System.in;
        System.setIn(new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)));
        try {
            return Ran.boltlore(all);
        } finally {
            System.setIn(terminal);
        }
    }

    private long files() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.count();
        }
    }

    @Test
    void writes_an_order_that_kit_takes() {
        Ran asked = ask("90-kw\nyes\nBL-3001\nNew Customer\n");

        Ran kit = Ran.boltlore("kit", folder.resolve("new.json"), "--out", folder.resolve("exports"));

        assertThat(asked.exit()).as(asked.toString()).isEqualTo(Exit.OK);
        assertThat(asked.out().replaceAll("\\s+", " ")).contains("because Drive unit, 90 kW is chosen");
        assertThat(kit.exit()).as(kit.toString()).isEqualTo(Exit.OK);
        assertThat(kit.out()).contains("BL-3001, New Customer");
    }

    @Test
    void takes_numbers_the_usual_answer_undo_and_later() {
        Ran asked = ask("2\nundo\nlater\nusual\nusual\nBL-3002\nNew Customer\n");

        assertThat(asked.exit()).as(asked.toString()).isEqualTo(Exit.OK);
        assertThat(asked.out())
                .contains("The last answer is taken back.")
                .contains("Drive unit, 60 kW, because One string");
    }

    @Test
    void explains_a_closed_answer_and_what_would_open_it_and_asks_again() {
        Ran asked = ask("why market=north-america\nexport=nema-5-15\nopen export=nema-5-15\nfoo\nstop\n");

        assertThat(asked.out().replaceAll("\\s+", " "))
                .contains("North America: closed, because")
                .contains("'open export=nema-5-15' says what would open it.")
                .contains("For V2L outlet NEMA 5-15")
                .contains("value 'foo'");
    }

    @Test
    void writes_nothing_when_it_is_stopped_or_its_input_ends() throws IOException {
        assertThat(ask("90-kw\nstop\n").exit()).isEqualTo(Exit.STOPPED);
        assertThat(ask("90-kw\n").exit()).isEqualTo(Exit.STOPPED);
        assertThat(ask("90-kw\nyes\nBL-3003\n").exit()).isEqualTo(Exit.STOPPED);
        assertThat(files()).isZero();
    }

    @Test
    void overwrites_no_file() throws IOException {
        Files.writeString(folder.resolve("new.json"), "mine");

        Ran asked = ask("90-kw\nyes\n", "--order", "BL-3004", "--customer", "New Customer");

        assertThat(asked.exit()).isEqualTo(Exit.FAULTS);
        assertThat(folder.resolve("new.json")).hasContent("mine");
    }

    @Test
    void writes_no_order_whose_number_is_a_path() throws IOException {
        Ran asked = ask("90-kw\nyes\n", "--order", "../x", "--customer", "New Customer");

        assertThat(asked.exit()).isEqualTo(Exit.FAULTS);
        assertThat(files()).isZero();
    }

    @Test
    void a_day_that_is_none_is_refused_in_plain_words() {
        Ran asked = Ran.boltlore("ask", "pannier-van", "--built", "1963-99-99");

        assertThat(asked.exit()).isEqualTo(Exit.USAGE);
        assertThat(asked.err()).contains("'1963-99-99' is no day").doesNotContain("Exception");
    }

    @Test
    void does_not_ask_what_the_build_date_settles() {
        InputStream terminal = System.in;
        System.setIn(new ByteArrayInputStream("stop\n".getBytes(StandardCharsets.UTF_8)));
        try {
            Ran asked = Ran.boltlore("ask", "pannier-van", "--built", "1963-04-17");

            assertThat(asked.out()).contains("Early body, to June 1965.");
        } finally {
            System.setIn(terminal);
        }
    }
}
