package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.demo.Barrow;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A question that takes several answers")
class SeveralAnswersTest {

    @TempDir
    private Path catalogue;

    @TempDir
    private Path out;

    @BeforeEach
    void write() {
        Barrow.write(catalogue);
    }

    @Test
    void is_read_from_an_order_as_a_list() {
        Ran kit = boltlore(
                "kit", catalogue.resolve("orders/tb-1.json"), "--catalogue", catalogue, "--out", out, "--json");

        assertThat(kit.out()).contains("\"bell\"").doesNotContain("\"tray\"").doesNotContain("\"plain\"");
    }

    @Test
    void is_refused_with_the_nearest_answer() throws IOException {
        Path order = catalogue.resolve("orders/tb-1.json");
        Files.writeString(order, Files.readString(order).replace("\"flag\"]", "\"flagg\"]"));

        assertThat(boltlore("kit", order, "--catalogue", catalogue, "--out", out)
                        .toString())
                .contains("'flagg'")
                .contains("Did you mean 'flag'?");
    }

    @Test
    void is_answered_on_the_command_line_in_one_go() {
        Ran two = boltlore("choose", "tin-barrow", "--catalogue", catalogue, "extras=bell,flag", "motor=250-w");
        Ran both = boltlore("choose", "tin-barrow", "--catalogue", catalogue, "extras=tray,flag");

        assertThat(two.toString()).contains("Bell").contains("Tray: no");
        assertThat(both.toString()).contains("The tray hides the flag.");
    }

    @Test
    void is_asked_once_and_takes_several_numbers() throws IOException {
        Path order = out.resolve("tb-2.json");
        Ran asked = typed(
                "1, 2\nTB-2\nSome Nursery\n\n\n\nwrite\n",
                "ask",
                "tin-barrow",
                "motor=500-w",
                "lamp=yes",
                "--catalogue",
                catalogue,
                "--out",
                order);

        assertThat(asked.out()).containsOnlyOnce("What else?").contains(" 1  bell: Bell");
        assertThat(Files.readString(order)).containsPattern("\"extras\": \\[\\s*\"bell\",\\s*\"flag\"\\s*\\]");
    }

    @Test
    void says_why_two_answers_do_not_go_together() {
        Ran asked = typed(
                "2, 3\nnone\nquit\n",
                "ask",
                "tin-barrow",
                "motor=500-w",
                "lamp=yes",
                "--catalogue",
                catalogue,
                "--out",
                out.resolve("x.json"));

        assertThat(asked.out()).contains("The tray hides the flag.");
    }

    private static Ran typed(String typed, Object... arguments) {
        InputStream terminal = System.in;
        System.setIn(new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)));
        try {
            return Ran.boltlore(arguments);
        } finally {
            System.setIn(terminal);
        }
    }
}
