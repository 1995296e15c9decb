package boltlore.checking;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Planted in the demo, whose cabin parts are of steel and of aluminium. */
@DisplayName("A finish that does not hold on a part's metal is told:")
class FinishSuitsMetalTest {

    private static final String ENDS = ": " + Check.FINISH_METAL.written();

    @TempDir
    private Path folder;

    @Test
    @DisplayName("steel in a bath for aluminium, each part that some order gives this finish")
    void bath_for_another_metal() throws IOException {
        assertThat(told(
                        "finishes.json",
                        "\"finish\": \"cabin-white\"",
                        "[\"steel\", \"aluminium\"]",
                        "[\"aluminium\"]"))
                .hasSize(10)
                .allMatch(remark -> remark.startsWith("part "));
    }

    @Test
    @DisplayName("a sheet of stainless steel under a coat for plain steel")
    void material_of_another_metal() throws IOException {
        assertThat(told("materials.json", "\"material\": \"s235-sheet-4\"", "\"steel\"", "\"stainless-steel\""))
                .isNotEmpty();
    }

    @Test
    @DisplayName("not where the finish is for both")
    void for_both() throws IOException {
        assertThat(told(
                        "finishes.json",
                        "\"finish\": \"black-cover\"",
                        "[\"aluminium\"]",
                        "[\"aluminium\", \"galvanised-steel\"]"))
                .isEmpty();
    }

    @Test
    @DisplayName("not where the finish does not say what it is for")
    void unsaid() throws IOException {
        assertThat(told("finishes.json", "\"finish\": \"zinc-nickel\"", "\"metals\": [\"steel\"], ", ""))
                .isEmpty();
    }

    private List<String> told(String file, String line, String from, String to) throws IOException {
        return PlantedDemo.remarks(folder, file, line, from, to).stream()
                .filter(remark -> remark.endsWith(ENDS))
                .toList();
    }
}
