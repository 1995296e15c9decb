package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A stop of one trade stands at the head of every sheet of the order")
class StoppedSheetsTest {

    private static final String CODE = "\"code\": \"stop\"";

    @TempDir
    private Path folder;

    private Path catalogue = Path.of("catalog");

    /** The van's front axle bears less than its kits bring. */
    @BeforeEach
    void weakAxle() throws IOException {
        catalogue = ChangedCatalogue.in(
                folder,
                "families/pannier-van/family.json",
                "\"axleLimitKg\": {\"front\": 1160",
                "\"axleLimitKg\": {\"front\": 900");
    }

    private static List<Path> json(Path out) throws IOException {
        try (Stream<Path> all = Files.walk(out)) {
            // A record to fill in is no sheet that somebody works from; what a customer reads says no more than that it
            // waits.
            return all.filter(file -> file.toString().endsWith(".json"))
                    .filter(file -> !file.toString().endsWith("-record.json")
                            && !file.toString().contains("/customer/")
                            && !file.toString().contains("/.boltlore/"))
                    .toList();
        }
    }

    private Path order(String name) {
        return catalogue.resolve("orders").resolve(name + ".json");
    }

    @Test
    @DisplayName("of every workbook that kit --all writes, and the command ends with 1")
    void every_sheet_of_a_kit() throws IOException {
        Path out = folder.resolve("out");
        Ran kit = boltlore("kit", order("bl-1003"), "--all", "--out", out, "--catalogue", catalogue);
        assertThat(kit.exit()).as(kit.toString()).isEqualTo(Exit.STOPPED);
        assertThat(json(out))
                .hasSizeGreaterThan(10)
                .allSatisfy(file -> assertThat(Files.readString(file))
                        .as(file.toString())
                        .contains(CODE)
                        .containsPattern(
                                "the front axle carries|die Vorderachse trägt|l'essieu avant porte|essieu avant"));
        Path quotation = out.resolve("BL-1003/customer/json/quotation.json");
        assertThat(Files.readString(quotation)).contains(CODE);
    }

    @Test
    @DisplayName("of the cutting list of several orders, which names the order, and that command ends with 1 too")
    void a_trade_that_found_nothing_itself() throws IOException {
        Path out = folder.resolve("cut");
        Ran cut = boltlore("cut", order("bl-1003"), order("bl-2001"), "--out", out, "--catalogue", catalogue);
        assertThat(cut.exit()).as(cut.toString()).isEqualTo(Exit.STOPPED);
        assertThat(cut.out().replaceAll("[\\s|]+", " "))
                .contains("STOP, not to be cut, coated, picked or shipped before this is settled: BL-1003: ")
                .doesNotContain("settled: BL-2001: ");
    }

    @Test
    @DisplayName("and of none where nothing stops")
    void a_sound_order() throws IOException {
        Path out = folder.resolve("sound");
        Ran kit = boltlore("kit", order("bl-2001"), "--all", "--out", out, "--catalogue", catalogue);
        assertThat(kit.exit()).as(kit.toString()).isEqualTo(Exit.OK);
        assertThat(json(out))
                .isNotEmpty()
                .allSatisfy(file ->
                        assertThat(Files.readString(file)).as(file.toString()).doesNotContain(CODE));
    }

    @Test
    @DisplayName("and prove shows it by an order, before anybody places one")
    void tried_by_prove() {
        Path examples = folder.resolve("examples");
        Ran prove = boltlore("prove", "pannier-van", "--examples", examples, "--catalogue", catalogue);
        assertThat(prove.exit()).isEqualTo(Exit.STOPPED);
        assertThat(prove.out())
                .contains("Stop: weight above limit: Front axle, Converted, fully laden")
                .contains("trial kits with every pair of values and every line that a valid order has: findings");
        Ran sound = boltlore("prove", "stook-pickup", "--catalogue", catalogue);
        assertThat(sound.exit()).isEqualTo(Exit.OK);
        assertThat(sound.out().replaceAll("\\s+", " "))
                .contains("that a valid order has: findings, told above, of fixings, axle-loads");
    }
}
