package boltlore.checking;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.json.CatalogueReader;
import boltlore.demo.Demo;
import boltlore.faults.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bounds are common practice, no source; copper has 8.96 g/cm³ (CRC Handbook, from memory). */
@DisplayName("A mass that cannot be is doubted")
class PlausibleMassTest {

    @TempDir
    private Path folder;

    /** The demo with another mass of one part. */
    private List<String> remarks(String file, String part, String massKg) throws IOException {
        try (Stream<Path> all = Files.walk(Path.of("catalog"))) {
            for (Path each : all.toList()) {
                Files.copy(
                        each,
                        folder.resolve("catalog").resolve(Path.of("catalog").relativize(each)));
            }
        }
        Path parts = folder.resolve("catalog/parts/" + file);
        String text = Files.readString(parts);
        String changed =
                text.replaceFirst("(\"part\": \"" + part + "\", \"revision\".*?\"massKg\": \")[0-9.]+", "$1" + massKg);
        assertThat(changed).isNotEqualTo(text);
        Files.writeString(parts, changed);
        var catalogue = ((Outcome.Sound<boltlore.catalogue.Catalogue>) CatalogueReader.read(folder.resolve("catalog")));
        return PlausibleMass.remarks(catalogue.value())
                .map(remark -> remark.about() + ": " + remark.found())
                .toList();
    }

    @Test
    void and_none_of_the_demo_is() {
        assertThat(PlausibleMass.remarks(Demo.catalogue())).isEmpty();
    }

    @ParameterizedTest(name = "90 kW at {0} kg: {1}")
    @CsvSource({"8.4, true", "17, true", "20, false", "430, false", "840, true"})
    void of_a_drive_unit_by_its_power(String massKg, boolean doubted) throws IOException {
        assertThat(remarks("common-high-voltage.json", "DU-90", massKg)).hasSize(doubted ? 1 : 0);
    }

    @ParameterizedTest(name = "3520 Wh at {0} kg: {1}")
    @CsvSource({"1.86, true", "11, false", "80, false", "186, true"})
    void of_a_module_by_its_energy(String massKg, boolean doubted) throws IOException {
        assertThat(remarks("common-high-voltage.json", "BM-44", massKg)).hasSize(doubted ? 1 : 0);
    }
}
