package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Checking a catalogue tells in one go")
class CheckCommandTest {

    private static final String FIXINGS = "parts/common-fixings.json";
    private static final String TORQUE = "torque far below its property class";

    @TempDir
    private Path folder;

    private static void change(Path catalogue, String file, String from, String to) throws IOException {
        String text = Files.readString(catalogue.resolve(file));
        assertThat(text).contains(from);
        Files.writeString(catalogue.resolve(file), text.replace(from, to));
    }

    private Path wrongTorqueAndBin() throws IOException {
        Path catalogue = ChangedCatalogue.in(folder, FIXINGS, "\"torqueNm\": \"84\"", "\"torqueNm\": \"8.4\"");
        change(catalogue, "parts/common-charging.json", "\"bin\": \"H-02-01-C-04\"", "\"bin\": \"H-02-01-C-03\"");
        return catalogue;
    }

    @Test
    void a_missing_mass_and_what_else_is_wrong_with_other_parts_and_families() throws IOException {
        Path catalogue = wrongTorqueAndBin();
        change(catalogue, "parts/common-charging.json", "\"massKg\": \"2.3\", ", "");
        change(
                catalogue,
                "families/stook-pickup/electrics.json",
                "\"part\": \"HV-JB1\", \"amps\": \"20\"",
                "\"part\": \"HV-JB1\", \"amps\": \"200\"");
        Ran ran = boltlore("check", catalogue);
        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("no 'massKg'");
        assertThat(ran.out())
                .contains(TORQUE)
                .contains("two parts in one bin")
                .contains("limit of the power wiring exceeded")
                .contains("run check again");
    }

    @Test
    void what_is_wrong_with_parts_beside_a_family_that_cannot_be_read() throws IOException {
        Path catalogue = wrongTorqueAndBin();
        change(catalogue, "families/pannier-van/family.json", "\"options\"", "\"option\"");
        Ran ran = boltlore("check", catalogue);
        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.out()).contains(TORQUE).contains("two parts in one bin");
    }

    @Test
    void what_is_wrong_with_parts_beside_files_of_the_workshop_that_are_missing() throws IOException {
        Path catalogue = wrongTorqueAndBin();
        Files.delete(catalogue.resolve("workshop/workshop.json"));
        Files.delete(catalogue.resolve("parts/common-labels.json"));
        Ran ran = boltlore("check", catalogue);
        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.out()).contains(TORQUE).contains("two parts in one bin");
    }

    @Test
    void nothing_false_of_a_part_that_could_not_be_read_or_of_what_it_is_in() throws IOException {
        Path catalogue = ChangedCatalogue.in(
                folder, "parts/common-charging.json", "\"massKg\": \"2.3\", ", "\"massKg\": \"two\", ");
        Ran ran = boltlore("check", catalogue);
        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.out()).doesNotContain("Check, ").contains("run check again");
    }

    @Test
    void the_same_as_JSON() throws IOException {
        Path catalogue = wrongTorqueAndBin();
        change(catalogue, "parts/common-charging.json", "\"massKg\": \"2.3\", ", "");
        assertThat(boltlore("check", catalogue, "--json").out())
                .contains("\"severity\": \"check\"")
                .contains("\"kind\": \"" + TORQUE + "\"")
                .contains("\"subject\": \"bin H-02-01-C-03\"");
    }
}
