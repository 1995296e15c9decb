package boltlore.checking;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("What a price holds of the work on a kit as a whole")
class WorkPricedTest {

    private static final String PRICING = "workshop/pricing.json";
    private static final String SHIPPING = "workshop/shipping.json";
    private static final String TESTS = "families/pannier-van/tests.json";

    @TempDir
    private Path folder;

    @Test
    @DisplayName("is its assembly, or that is told")
    void assembly() throws IOException {
        assertThat(told(PRICING, text(PRICING, "\"kitWork\"", "]},"), "")).containsExactly("work on kits");
    }

    @Test
    @DisplayName("is its assembly also where only some stages take time")
    void assemblyOfSomeStages() throws IOException {
        assertThat(told(PRICING, "\"positionMin\": \"4\"", "\"positionMin\": \"0\""))
                .isEmpty();
    }

    @Test
    @DisplayName("is its packing, or that is told")
    void packing() throws IOException {
        assertThat(told(SHIPPING, text(SHIPPING, "\"usualCrates\"", "],"), "")).containsExactly("crates");
    }

    @Test
    @DisplayName("is each group of its tests, or that is told with the groups")
    void tests() throws IOException {
        assertThat(told(TESTS, "\"group\": \"bonding\", \"minutes\": \"25\",", "\"group\": \"bonding\","))
                .containsExactly("tests of pannier-van");
    }

    @Test
    @DisplayName("takes minutes that are usual: where the point slipped by two places, that is told")
    void slipped() throws IOException {
        assertThat(PlantedDemo.remarks(folder, PRICING, "\"positionMin\": \"4\"", "\"positionMin\": \"0.04\""))
                .anyMatch(remark -> remark.endsWith(": " + Check.UNUSUAL.written()));
    }

    private static String text(String file, String from, String to) throws IOException {
        String all = Files.readString(Path.of("catalog").resolve(file));
        int begin = all.indexOf(from);
        return all.substring(begin, all.indexOf(to, begin) + to.length());
    }

    private List<String> told(String file, String from, String to) throws IOException {
        String written = ": " + Check.NOT_IN_PRICE.written();
        return PlantedDemo.remarks(folder, file, from, to).stream()
                .filter(remark -> remark.endsWith(written))
                .map(remark -> remark.substring(0, remark.length() - written.length()))
                .toList();
    }
}
