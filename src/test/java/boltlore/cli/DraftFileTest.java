package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.choices.Choices;
import boltlore.demo.Demo;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A draft")
class DraftFileTest {

    private static final Order ORDER = Order.draft(Choices.of(Demo.catalogue().family("pannier-van"), Map.of()));

    @TempDir
    Path temp;

    private Path folder;

    @BeforeEach
    void own_folder() throws IOException {
        folder = temp.toRealPath();
    }

    private DraftFile draft() {
        return DraftFile.of(null, folder.resolve("van.json"), Path.of("catalog/schema"));
    }

    private static Order of(String customer) {
        return new OrderBuilder(ORDER).customer(customer).build();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private String text(String name) throws IOException {
        return Files.readString(folder.resolve(name));
    }

    @Test
    @DisplayName("of each of two talks that began before either had an answer stays")
    void two_at_once() throws IOException {
        DraftFile one = draft();
        DraftFile other = draft();

        assertThat(one.keep(of("One"))).isTrue();
        assertThat(other.keep(of("Other"))).isTrue();
        assertThat(one.keep(of("One again"))).isTrue();

        assertThat(text("van.draft.json")).contains("One again");
        assertThat(text("van-2.draft.json")).contains("Other");
        assertThat(other.says()).contains("van-2.draft.json");
    }

    @Test
    @DisplayName("that two talks go on from is taken by the first that answers, and the other's stands beside it")
    void taken_up_twice() throws IOException {
        draft().keep(of("Before"));
        Path file = folder.resolve("van.draft.json");
        DraftFile one = DraftFile.of(file, null, Path.of("catalog/schema"));
        DraftFile other = DraftFile.of(file, null, Path.of("catalog/schema"));

        one.keep(of("One"));
        other.keep(of("Other"));
        other.drop();

        assertThat(text("van.draft.json")).contains("One");
        assertThat(names()).containsExactly("van.draft.json");
    }

    @Test
    @DisplayName("never follows a link that somebody has planted, under its own name or an older program's")
    void follows_no_link() throws IOException {
        Path victim = Files.writeString(folder.resolve("victim.txt"), "mine");
        Files.createSymbolicLink(folder.resolve("van.draft.json"), victim);
        Files.createSymbolicLink(folder.resolve(".van.draft.json.new"), victim);
        Files.createSymbolicLink(folder.resolve("van-2.draft.json"), folder.resolve("nowhere"));

        DraftFile draft = draft();
        draft.keep(of("One"));
        draft.keep(of("Two"));

        assertThat(victim).hasContent("mine");
        assertThat(text("van-3.draft.json")).contains("Two");
        assertThat(names())
                .containsExactly(
                        ".van.draft.json.new", "van-2.draft.json", "van-3.draft.json", "van.draft.json", "victim.txt");
    }

    @Test
    @DisplayName("taken up through a link leaves what the link leads to as it is")
    void taken_up_through_a_link() throws IOException {
        Path victim = Files.writeString(folder.resolve("victim.txt"), "mine");
        Path link = Files.createSymbolicLink(folder.resolve("van.draft.json"), victim);

        DraftFile draft = DraftFile.of(link, null, Path.of("catalog/schema"));
        draft.keep(of("One"));

        assertThat(victim).hasContent("mine");
        assertThat(text("van-2.draft.json")).contains("One");
    }

    @Test
    @DisplayName("that somebody has changed meanwhile stays, and is not taken away when the order is written")
    void changed_meanwhile() throws IOException {
        DraftFile draft = draft();
        draft.keep(of("One"));
        Files.writeString(folder.resolve("van.draft.json"), "mine");

        draft.keep(of("Two"));
        draft.drop();

        assertThat(names()).containsExactly("van.draft.json");
        assertThat(text("van.draft.json")).isEqualTo("mine");
    }

    @Test
    @DisplayName("in a place where nobody may write is told as not kept")
    void unwritable() {
        DraftFile draft = DraftFile.of(null, Path.of("/proc/boltlore/van.json"), Path.of("catalog/schema"));

        assertThat(draft.keep(of("One"))).isFalse();
        assertThat(draft.says()).contains("nothing is kept");
    }
}
