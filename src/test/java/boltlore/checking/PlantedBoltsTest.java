package boltlore.checking;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bolts left out of the demo, a shaft packed in another length than it has, and what a family that cannot be read names. */
class PlantedBoltsTest {

    @TempDir
    private Path folder;

    /** What stands on a bracket and is screwed into its threads fills none of its clear holes; what goes through them does. */
    @ParameterizedTest
    @CsvSource({
        "pannier-drive, PV-CR-M, FX-M12X90, 6, 4, line pannier-van/cradle-middle",
        "pannier-drive, PV-CR-L, FX-M12X90, 6, 4, line pannier-van/cradle-late",
        "pannier-drive, PV-CR-E, FX-M12X90, 8, 6, line pannier-van/cradle-early",
        "stook-drive, ST-CR-L, FX-M12X90, 6, 5, line stook-pickup/cradle-late",
        "stook-drive, ST-CR-E, FX-M12X90, 8, 8,"
    })
    void a_bolt_of_a_bracket_is_missing(
            String file, String part, String bolt, String from, String to, @Nullable String about) throws IOException {
        String asked = "{\"part\": \"" + bolt + "\", \"each\": \"";
        PlantedDemo.told(
                folder,
                Check.HOLE_UNUSED,
                "parts/" + file + ".json",
                "\"part\": \"" + part + "\"",
                asked + from,
                asked + to,
                about);
    }

    /** Two brackets on each side hold the box with six bolts: a hole left over in each of two is none of theirs, six are all. */
    @ParameterizedTest
    @CsvSource({
        "'{\"part\": \"FX-M10X30\", \"each\": \"3', '{\"part\": \"FX-M10X30\", \"each\": \"2', position stook-pickup/battery-box",
        "'\"diameterMm\": 11, \"count\": 3', '\"diameterMm\": 11, \"count\": 4', position stook-pickup/battery-box",
        "'\"diameterMm\": 11, \"count\": 3', '\"diameterMm\": 11, \"count\": 6',"
    })
    void what_several_brackets_hold_goes_through_all_of_their_holes_or_none(
            String from, String to, @Nullable String about) throws IOException {
        PlantedDemo.told(
                folder, Check.HOLE_UNUSED, "parts/stook-battery.json", "\"part\": \"ST-BB-EL\"", from, to, about);
    }

    @ParameterizedTest
    @CsvSource({"PV-PS-ES, 320, 612, part PV-PS-ES", "PV-PS-ES, 320, 259, part PV-PS-ES", "PV-PS-ES, 320, 335,"})
    void a_shaft_is_packed_in_its_length(String part, String from, String to, @Nullable String about)
            throws IOException {
        String sized = "\"sizeMm\": {\"length\": ";
        PlantedDemo.told(
                folder, Check.SIZE, "workshop/shipping.json", "\"" + part + "\"", sized + from, sized + to, about);
    }

    /** A mistyped part, and a circuit without its bleed: the family cannot be read, and no cable of it is at fault. */
    @ParameterizedTest
    @CsvSource({
        "kit/low-voltage.json, '\"part\": \"LV-BF15\"', '\"part\": \"LV-BF51\"'",
        "fits.json, '\"bleed\": \"motor-bleed\", ', ''",
        "fits.json, '\"fill\": \"motor-tank\", ', ''"
    })
    void what_only_an_unreadable_family_names_is_not_told(String file, String from, String to) throws IOException {
        assertThat(PlantedDemo.ofTheRest(folder, "families/pannier-van/" + file, from, to))
                .isEmpty();
    }

    @Test
    void a_cable_without_a_conductor_is_told_where_all_families_are_read() throws IOException {
        PlantedDemo.told(
                folder,
                Check.CONDUCTORS,
                "parts/pannier-high-voltage.json",
                "\"part\": \"PV-HB-LLB\"",
                "{\"part\": \"HV-W95\", \"perMetre\": \"2\"}, ",
                "",
                "part PV-HB-LLB");
    }
}
