package boltlore.catalogue.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import boltlore.faults.Fault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The files of a catalogue")
class CatalogueFilesTest {

    private static final String NOT_COMPARED =
            "Until then the files are not fully compared with one another, and more may be found.";

    @TempDir
    private Path folder;

    private SmallCatalogue small;

    @BeforeEach
    void begin() {
        small = SmallCatalogue.in(folder);
    }

    @Test
    void a_workshop_file_that_is_missing_is_said_and_nothing_is_guessed_from_it() {
        small.remove("workshop/cautions.json");
        assertThat(small.faults())
                .containsExactly(Fault.of(
                        "workshop/cautions.json", "nothing of that name", "a JSON file", "Add it. " + NOT_COMPARED));
    }

    @Test
    void a_family_without_its_first_file() {
        small.remove("families/cart/family.json");
        assertThat(small.faults())
                .containsExactly(Fault.of(
                        "families/cart/family.json", "nothing of that name", "a JSON file", "Add it. " + NOT_COMPARED));
    }

    @Test
    void a_broken_file_hides_no_slip_of_another_file_by_itself() {
        small.write("finishes.json", "{").change("materials.json", "\"form\": \"sheet\"", "\"form\": \"sheets\"");
        assertThat(small.faults())
                .extracting(Fault::file, Fault::found)
                .containsExactly(tuple("finishes.json", "the end of the file"), tuple("materials.json", "'sheets'"));
    }

    @Test
    void a_slip_in_one_file_does_not_hide_a_name_in_another_that_nothing_has() throws IOException {
        slip("parts/bought.json");
        small.change("families/cart/kit/power.json", "\"stage\": \"rear\"", "\"stage\": \"back\"");

        assertThat(small.faults())
                .extracting(Fault::file, Fault::found)
                .hasSize(2)
                .contains(tuple("families/cart/kit/power.json", "'back'"));
    }

    /** Leaves a colon out. */
    private void slip(String file) throws IOException {
        small.write(file, Files.readString(folder.resolve(file)).replaceFirst("\": ", "\" "));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "finishes.json",
                "materials.json",
                "parts/bought.json",
                "families/cart/family.json",
                "families/cart/kit/power.json",
                "workshop/workshop.json",
                "workshop/markets.json"
            })
    void nothing_is_missed_that_stands_in_a_file_with_a_slip(String file) throws IOException {
        slip(file);

        assertThat(small.faults()).extracting(Fault::file).containsExactly(file);
    }

    @Test
    void slips_of_all_files_and_between_files_come_in_one_go() {
        small.change("materials.json", "\"form\": \"sheet\"", "\"form\": \"sheets\"")
                .change("parts/bought.json", "\"massKg\": \"0.017\"", "\"massKg\": \"-0.1\"")
                .change("families/cart/kit/power.json", "\"stage\": \"rear\"", "\"stage\": \"back\"");
        assertThat(small.faults())
                .extracting(Fault::file)
                .containsExactly("families/cart/kit/power.json", "materials.json", "parts/bought.json");
    }

    @Test
    void a_file_that_holds_something_else_gives_one_fault_and_not_all_that_follow_from_it() {
        small.write("workshop/workshop.json", "[]");
        assertThat(small.faults())
                .containsExactly(
                        new Fault("workshop/workshop.json", 1, "", "an empty list", "an object in { }", NOT_COMPARED));
    }

    @Test
    void a_folder_that_is_called_as_a_file() {
        small.remove("workshop/pricing.json").write("workshop/pricing.json/note.txt", "?");
        assertThat(small.faults())
                .extracting(Fault::file, Fault::found, Fault::expected)
                .containsExactly(tuple("workshop/pricing.json", "a folder", "a JSON file"));
    }

    @Test
    void names_that_nothing_has_hide_no_slip_that_comes_of_other_files() {
        small.change(
                        "parts/bought.json",
                        "\"supplier\": \"Bolt Bros\", \"orderCode\": \"M8",
                        "\"supplier\": \"No Bros\", \"orderCode\": \"M8")
                .change("workshop/pricing.json", "\"currency\": \"GBP\", \"rate\"", "\"currency\": \"EUR\", \"rate\"");
        assertThat(small.faults())
                .extracting(Fault::file, Fault::found)
                .contains(tuple("workshop/pricing.json", "a rate of EUR"))
                .anyMatch(tuple -> tuple.toList().get(0).equals("parts/bought.json"));
    }

    @Test
    void a_chain_of_assemblies_as_deep_as_may_be() {
        small.write("parts/deep.json", chain(99));
        assertThat(small.faults()).extracting(Fault::found).containsExactly("DEEP-0, which nothing uses");
    }

    @ParameterizedTest
    @ValueSource(ints = {100, 1000})
    void a_chain_of_assemblies_deeper_than_anybody_builds(int deep) {
        small.write("parts/deep.json", chain(deep));
        assertThat(small.faults())
                .extracting(Fault::found)
                .contains("part 'DEEP-0' with " + (deep + 1) + " levels of parts within parts");
    }

    private static String chain(int deep) {
        StringBuilder parts = new StringBuilder("{\"parts\": [");
        for (int i = 0; i < deep; i++) {
            parts.append("{\"part\": \"DEEP-" + i + "\", \"revision\": \"A\", \"name\": \"Deep\", \"unit\": \"each\","
                    + " \"source\": \"make\", \"cost\": \"0\", \"contains\": [{\"part\": \"DEEP-" + (i + 1)
                    + "\", \"quantity\": 1}]},");
        }
        return parts.append("{\"part\": \"DEEP-" + deep + "\", \"revision\": \"A\", \"name\": \"Deep\","
                        + " \"unit\": \"each\", \"source\": \"make\", \"cost\": \"1\", \"massKg\": \"0\"}]}")
                .toString();
    }

    @Test
    void a_file_that_no_part_of_the_catalogue_would_read() {
        small.write("families/cart/drive.json", "{}");
        assertThat(small.faults())
                .extracting(Fault::file, Fault::found, Fault::advice)
                .containsExactly(tuple(
                        "families/cart/drive.json",
                        "a JSON file that is no part of a catalogue",
                        "Move or rename it. " + NOT_COMPARED));
    }

    @Test
    void orders_schemas_hidden_files_and_other_kinds_of_file_are_left_alone() {
        small.write("orders/x.json", "?")
                .write("schema/x.schema.json", "?")
                .write(".x.json", "?")
                .write("parts/.x.json", "?")
                .write("README.md", "?")
                .write("parts/old.json.bak", "?");
        assertThat(small.faults()).isEmpty();
    }

    @Test
    void a_catalogue_of_the_workshop_alone_is_sound() {
        small.remove("finishes.json")
                .remove("workshop/shipping.json")
                .remove("workshop/stores.json")
                .remove("materials.json")
                .remove("workshop/pricing.json")
                .remove("workshop/capacity.json")
                .remove("parts/made.json")
                .remove("parts/bought.json")
                .remove("families/cart/family.json")
                .remove("families/cart/companions.json")
                .remove("families/cart/weights.json")
                .remove("families/cart/driving.json")
                .remove("families/cart/electrics.json")
                .remove("families/cart/tests.json")
                .remove("families/cart/joints.json")
                .remove("families/cart/fits.json")
                .remove("families/cart/kit/drive.json")
                .remove("families/cart/kit/power.json");
        assertThat(small.faults()).isEmpty();
    }

    @Test
    void a_folder_that_is_missing_and_a_file_in_its_place() {
        assertThat(CatalogueReader.read(folder.resolve("gone")).faults())
                .extracting(Fault::found)
                .containsExactly("nothing of that name");
        assertThat(CatalogueReader.read(folder.resolve("materials.json")).faults())
                .extracting(Fault::found)
                .containsExactly("a file");
    }

    @Test
    void the_revision_is_twelve_digits_that_stay_the_same() {
        String revision = small.catalogue().revision();
        assertThat(revision).matches("[0-9a-f]{12}");
        small.write("orders/other.json", "{}").write("schema/other.schema.json", "{}");
        assertThat(small.catalogue().revision()).isEqualTo(revision);
    }

    @Test
    void the_revision_changes_with_every_byte_and_every_name() {
        String revision = small.catalogue().revision();
        String text = small.text("materials.json");
        assertThat(small.write("materials.json", text + "\n").catalogue().revision())
                .isNotEqualTo(revision);
        String kit = small.text("families/cart/kit/power.json");
        small.write("materials.json", text)
                .remove("families/cart/kit/power.json")
                .write("families/cart/kit/cables.json", kit);
        assertThat(small.catalogue().revision()).isNotEqualTo(revision);
    }
}
