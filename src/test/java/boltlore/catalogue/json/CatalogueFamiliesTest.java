package boltlore.catalogue.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import boltlore.faults.Fault;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Two families on one part master")
class CatalogueFamiliesTest {

    private static final String WAGON = """
            {"family": "wagon", "says": "Wagon",
             "options": [{"option": "side", "asks": "Which side?", "values": [{"value": "left", "says": "Left"}]}]}
            """;

    private static final String KIT = """
            {"positions": [{"position": "place", "says": "Place", "subSystem": "drive", "stage": "rear", "fill": "one",
              "lines": [{"line": "only", "part": "%s", "quantity": 1, "when": {"side": "left"}}]}]}
            """;

    @TempDir
    private Path folder;

    private SmallCatalogue small;

    @BeforeEach
    void begin() {
        small = SmallCatalogue.in(folder).write("families/wagon/family.json", WAGON);
    }

    @Test
    void a_family_need_not_decide_roles_and_pairs_of_parts_that_it_never_brings() {
        small.write("families/wagon/kit/all.json", KIT.formatted("MOTOR"));
        assertThat(small.faults()).isEmpty();
    }

    @Test
    void but_of_parts_that_it_brings() {
        small.write("families/wagon/kit/all.json", KIT.formatted("FRAME"));
        assertThat(small.faults())
                .extracting(Fault::file, Fault::found)
                .containsExactly(tuple("parts/made.json", "finish role 'frame', which family 'wagon' does not decide"));
    }

    @Test
    void and_a_pair_in_each_family_that_brings_one_of_it() {
        small.write("families/wagon/kit/all.json", KIT.formatted("PEDAL-L"));
        assertThat(small.faults())
                .extracting(Fault::found)
                .containsExactly("pair 'pedal' of PEDAL-L, which family 'wagon' does not list");
    }

    @Test
    void options_positions_and_lines_of_one_are_unknown_in_the_other() {
        small.write("families/wagon/kit/all.json", KIT.formatted("MOTOR").replace("\"side\"", "\"inlet\""));
        assertThat(small.faults()).extracting(Fault::found).containsExactly("'inlet'");
    }

    @Test
    void but_the_same_name_may_stand_in_both() {
        small.write("families/wagon/kit/all.json", KIT.formatted("MOTOR").replace("\"only\"", "\"motor\""));
        assertThat(small.faults()).isEmpty();
    }

    @Test
    void parts_without_any_family_are_not_yet_called_unused() {
        small.remove("families/wagon/family.json")
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
}
