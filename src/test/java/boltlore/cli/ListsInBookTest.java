package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Lists of the book")
class ListsInBookTest {

    @TempDir
    private Path folder;

    private DeskAt desk = new DeskAt("");

    @BeforeEach
    void three() {
        desk = DeskAt.file(folder);
        for (String order : new String[] {"bl-1001", "bl-1003", "bl-1004"}) {
            desk.done("order", "draft", "catalog/orders/" + order + ".json");
        }
    }

    @Test
    @DisplayName("are sorted by any key of their JSON, either way")
    void sorted() {
        assertThat(desk.done("order", "list", "--sort", "order")).containsPattern("BL-1001.*BL-1003.*BL-1004");
        assertThat(desk.done("order", "list", "--sort", "-order")).containsPattern("BL-1004.*BL-1003.*BL-1001");
        assertThat(desk.done("order", "list", "--sort", "state,-due")).containsPattern("BL-1004.*BL-1003.*BL-1001");
    }

    @Test
    @DisplayName("are sifted by any key, and the same in JSON")
    void sifted() {
        assertThat(desk.done("order", "list", "--where", "order=1003"))
                .contains("BL-1003,")
                .doesNotContain("BL-1001,");
        assertThat(desk.done("order", "list", "--where", "order=1003", "--json"))
                .contains("BL-1003")
                .doesNotContain("BL-1001");
        assertThat(desk.done("order", "list", "--where", "order=1003", "--where", "state=quoted"))
                .doesNotContain("BL-1003,");
    }

    @Test
    @DisplayName("name the keys there are where one is asked for that is none")
    void unknown() {
        assertThat(desk.refused("order", "list", "--sort", "dew"))
                .contains("--sort: found 'dew'")
                .contains("order, family, state")
                .contains("due");
        assertThat(desk.refused("order", "list", "--where", "stat=x")).contains("--where: found 'stat'");
    }

    @Test
    @DisplayName("and a person is asked before what cannot be undone, of which nothing but yes is a yes")
    void sure() {
        StringWriter out = new StringWriter();
        Screen screen = new Screen(new PrintWriter(out));
        assertThat(Sure.asked(dialogue(screen, "yes\n"), "All of P-2 is erased").faults())
                .isEmpty();
        assertThat(Sure.asked(dialogue(screen, "y\n"), "All of P-2 is erased").faults())
                .hasSize(1);
        assertThat(Sure.asked(dialogue(screen, ""), "All of P-2 is erased").faults())
                .hasSize(1);
        screen.flush();
        assertThat(out.toString()).contains("All of P-2 is erased, and that cannot be undone. Go on?");
    }

    private static Dialogue dialogue(Screen screen, String typed) {
        return new Dialogue(screen, new BufferedReader(new StringReader(typed)));
    }
}
