package boltlore.checking;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A slip shows against what is alike: other parts of a kind, other bodies, the other family, the other languages. */
class PlantedSistersTest {

    private static final String VAN = "families/pannier-van/";
    private static final String PICKUP = "families/stook-pickup/";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        "five minutes, five seconds, 'group bonding of stook-pickup'",
        "fünf Minuten, fünf Sekunden, 'group bonding of stook-pickup'",
        "cinq minutes, quinze minutes, 'group bonding of stook-pickup'",
        "five minutes, 5 minutes,"
    })
    void times_in_words(String from, String to, @Nullable String about) throws IOException {
        PlantedDemo.told(folder, Check.TEXT_FIGURES, PICKUP + "tests.json", "\"group\": \"bonding\"", from, to, about);
    }

    @ParameterizedTest
    @CsvSource({
        "Auf 1400 mbar, Auf 140 mbar, 'test cooling-drop of pannier-van'",
        "Auf 1400 mbar, Bis auf 1400 mbar,",
    })
    void figures_of_a_method(String from, String to, @Nullable String about) throws IOException {
        PlantedDemo.told(folder, Check.TEXT_FIGURES, VAN + "tests.json", "\"test\": \"cooling-drop\"", from, to, about);
    }

    @ParameterizedTest
    @CsvSource({
        "'\"de\": \"Widerstand der geschlossenen Schleife\"', '\"de\": \"Résistance de la boucle fermée\"', 'test interlock-loop of pannier-van'",
        "'\"de\": \"Widerstand der geschlossenen Schleife\"', '\"de\": \"Schleifenwiderstand, geschlossen\"',"
    })
    void language_in_its_place(String from, String to, @Nullable String about) throws IOException {
        PlantedDemo.told(
                folder, Check.TEXT_LANGUAGE, VAN + "tests.json", "\"test\": \"interlock-loop\"", from, to, about);
    }

    /** One code, one thing: a second part that is bought by it is another's. */
    @ParameterizedTest
    @CsvSource({"S74601, G35722, part VA-RES", "S74601, G35723,"})
    void order_code(String from, String to, @Nullable String about) throws IOException {
        PlantedDemo.told(folder, Check.ORDER_CODE, "parts/common-vacuum.json", "\"part\": \"VA-RES\"", from, to, about);
    }

    @ParameterizedTest
    @CsvSource({
        "ST-HE-L, D-PH-148, D-PH-101, part ST-HE-L",
        "ST-HE-L, D-PH-148, D-PH-999,",
        "ST-HB-EL, D-PH-101, D-PH-999,"
    })
    void drawing(String part, String from, String to, @Nullable String about) throws IOException {
        PlantedDemo.told(
                folder,
                Check.DRAWING_SHARED,
                "parts/stook-high-voltage.json",
                "\"part\": \"" + part + "\"",
                "\"number\": \"" + from,
                "\"number\": \"" + to,
                about);
    }

    @ParameterizedTest
    @CsvSource({
        "common-high-voltage, HV-IMD, '\"tracked\": \"serial\", ', '', part HV-IMD",
        "common-high-voltage, HV-F300, '\"tracked\": \"lot\"', '\"tracked\": \"serial\"',",
        "common-charging, CH-7, '\"tracked\": \"serial\"', '\"tracked\": \"lot\"', part CH-7",
        "pannier-drive, PV-PS-ES, '\"tracked\": \"serial\", ', '', part PV-PS-ES",
        "common-charging, CH-RCM, '\"revision\"', '\"tracked\": \"lot\", \"revision\"',"
    })
    void tracked(String file, String part, String from, String to, @Nullable String about) throws IOException {
        PlantedDemo.told(
                folder, Check.TRACKED, "parts/" + file + ".json", "\"part\": \"" + part + "\"", from, to, about);
    }

    @ParameterizedTest
    @CsvSource({
        "'\"axleLimitKg\": {\"front\": 1165', '\"axleLimitKg\": {\"front\": 1365', 'family pannier-van, late'",
        "'\"axleLimitKg\": {\"front\": 1165', '\"axleLimitKg\": {\"front\": 1195',",
        "'\"axleKg\": {\"front\": 888', '\"axleKg\": {\"front\": 788', 'family pannier-van, late'"
    })
    void body_of_another_era(String from, String to, @Nullable String about) throws IOException {
        PlantedDemo.told(folder, Check.ERA_UNLIKE, VAN + "family.json", "\"era\": \"late\"", from, to, about);
    }

    /** A wire of 0.75 mm² in a loom carries about 11 A for hours in air of 50 °C (DIN VDE 0298-4, from memory). */
    @ParameterizedTest
    @CsvSource({"11,", "13, circuit pannier-van/export", "22, circuit pannier-van/export"})
    void wire_of_a_circuit(String amps, @Nullable String about) throws IOException {
        PlantedDemo.told(
                folder,
                Check.CABLE_FACTS,
                VAN + "electrics.json",
                "\"circuit\": \"export\"",
                "\"wireAmps\": \"9\"",
                "\"wireAmps\": \"" + amps + "\"",
                about);
    }

    /** What may be used of a pack goes with its modules; cells of vehicles give 80 to 97 % of what is in them, common practice. */
    @ParameterizedTest
    @CsvSource({"26,", "18, pack stook-pickup/one-string", "22, pack stook-pickup/one-string"})
    void usable_energy(String kwh, @Nullable String about) throws IOException {
        assertThat(PlantedDemo.remarks(
                                folder,
                                PICKUP + "electrics.json",
                                "\"pack\": \"one-string\"",
                                "\"usableKwh\": \"25\"",
                                "\"usableKwh\": \"" + kwh + "\"")
                        .stream()
                        .filter(remark -> remark.endsWith(": " + Check.PACK_FACTS.written()))
                        .distinct())
                .isEqualTo(about == null ? List.of() : List.of(about + ": " + Check.PACK_FACTS.written()));
    }

    /** With 420 A²s at 20 A and 650 at 25 A, one of 250 A is 95,000, as data sheets of such fuses go; from memory. */
    @ParameterizedTest
    @CsvSource({
        "'\"letThroughA2s\": \"95000\"', '\"letThroughA2s\": \"9500\"', fuse stook-pickup/main-250",
        "'\"letThroughA2s\": \"95000\"', '\"letThroughA2s\": \"130000\"',"
    })
    void let_through(String from, String to, @Nullable String about) throws IOException {
        PlantedDemo.told(
                folder, Check.FUSE_UNLIKE, PICKUP + "electrics.json", "\"fuse\": \"main-250\"", from, to, about);
    }

    @ParameterizedTest
    @CsvSource({
        "tests.json, '\"test\": \"discharge-time\"', '\"atMost\": \"5\"', '\"atMost\": \"4\"', test stook-pickup/discharge-time",
        "tests.json, '\"instrument\": \"ohmmeter\"', '\"to\": \"2000\"', '\"to\": \"20000\"', instrument stook-pickup/ohmmeter",
        "tests.json, '\"group\": \"export\"', '\"cautions\": [\"high-voltage\"], ', '', group stook-pickup/export",
        "driving.json, '\"part\": \"DU-60\"', '\"gearPercent\": \"97\"', '\"gearPercent\": \"79\"', drive unit stook-pickup/DU-60",
        "driving.json, '\"mount\": \"drive-mount-front\"', '\"throatMm\": \"4\"', '\"throatMm\": \"5\"',",
        "driving.json, '\"mount\": \"drive-mount-front\"', '\"throatMm\": \"4\"', '\"throatMm\": \"14\"', mount stook-pickup/drive-mount-front",
        "kit/cooling.json, '\"position\": \"motor-pump\"', '\"stage\": \"front\"', '\"stage\": \"side\"', position stook-pickup/motor-pump",
        "family.json, '\"option\": \"language\"', '\"languages\": [\"fr\"]', '\"languages\": [\"de\"]', value stook-pickup/language/fr",
        "joints.json, '\"position\": \"cradle\"', '\"clampMm\": 68', '\"clampMm\": 6', joint stook-pickup/cradle"
    })
    void the_same_in_another_family(String file, String line, String from, String to, @Nullable String about)
            throws IOException {
        assertThat(PlantedDemo.remarks(folder, PICKUP + file, line, from, to).stream()
                        .filter(remark -> remark.endsWith(": " + Check.UNLIKE_FAMILY.written()))
                        .distinct())
                .isEqualTo(about == null ? List.of() : List.of(about + ": " + Check.UNLIKE_FAMILY.written()));
    }

    @ParameterizedTest
    @CsvSource({
        "'\"role\": \"small\"', '\"role\": \"cabin\"', part ST-AB-LH",
        "'\"hangPoints\": 1', '\"hangPoints\": 2', part ST-AB-LH",
        "'\"operation\": \"deburr\"', '\"operation\": \"weld\"', part ST-AB-LH",
        "'\"setUpMin\": \"6\"', '\"setUpMin\": \"5\"',"
    })
    void a_part_and_others_of_its_kind(String from, String to, @Nullable String about) throws IOException {
        assertThat(PlantedDemo.remarks(folder, "parts/stook-controls.json", "\"part\": \"ST-AB-LH\"", from, to).stream()
                        .filter(remark -> remark.endsWith(": " + Check.UNLIKE_KIND.written()))
                        .distinct())
                .isEqualTo(about == null ? List.of() : List.of(about + ": " + Check.UNLIKE_KIND.written()));
    }

    @ParameterizedTest
    @CsvSource({
        "'\"stage\": \"front\"', '\"stage\": \"side\"', position pannier-van/heater-plate",
        "'\"subSystem\": \"climate\"', '\"subSystem\": \"cooling\"', position pannier-van/heater-plate",
        "'\"bag\": \"front-climate\"', '\"bag\": \"cabin-controls\"', position pannier-van/heater-plate",
        "'\"bag\": \"front-climate\"', '\"bag\": \"front-own\"',"
    })
    void a_bag_and_its_stage(String from, String to, @Nullable String about) throws IOException {
        assertThat(
                        PlantedDemo.remarks(
                                        folder, VAN + "kit/climate.json", "\"position\": \"heater-plate\"", from, to)
                                .stream()
                                .filter(remark -> remark.endsWith(": " + Check.BAG_UNLIKE.written()))
                                .distinct())
                .isEqualTo(about == null ? List.of() : List.of(about + ": " + Check.BAG_UNLIKE.written()));
    }

    /** A branch that feeds what feeds it has no end of loads; the check of it comes to an end all the same. */
    @Test
    void branches_in_a_circle() throws IOException {
        assertThat(PlantedDemo.remarks(
                        folder,
                        VAN + "electrics.json",
                        "\"branch\": \"battery-60-kw\"",
                        "{\"branches\": [\"drive-60-kw\"",
                        "{\"branches\": [\"string\""))
                .isNotNull();
    }

    /** Line and position narrowed alike leave no hole; a bracket's own bracket may have reasons of its own. */
    @ParameterizedTest
    @CsvSource({
        "'\"export\": [\"cee-7-3\", \"bs-1363\", \"nema-5-15\", \"as-nzs-3112\"]', '\"export\": [\"cee-7-3\", \"bs-1363\", \"nema-5-15\"]', position pannier-van/export-switch",
        "'\"export\": [\"cee-7-3\", \"bs-1363\", \"nema-5-15\", \"as-nzs-3112\"]', '\"export\": [\"cee-7-3\", \"bs-1363\"]',"
    })
    void orders_that_lose_a_part(String from, String to, @Nullable String about) throws IOException {
        String text = Files.readString(Path.of("catalog").resolve(VAN + "kit/export.json"));
        int at = text.indexOf("\"position\": \"export-switch\"");
        String whole = text.substring(at, text.indexOf("]}", text.indexOf("\"lines\"", at)));
        assertThat(PlantedDemo.remarks(folder, VAN + "kit/export.json", whole, whole.replace(from, to)))
                .filteredOn(remark -> remark.endsWith(": " + Check.DUE_UNLIKE.written()))
                .isEqualTo(about == null ? List.of() : List.of(about + ": " + Check.DUE_UNLIKE.written()));
    }

    /** Front and rear mount take four bolts each into the cradle. */
    @ParameterizedTest
    @CsvSource({
        "'\"size\": \"M10\", \"count\": 8', '\"size\": \"M10\", \"count\": 9',",
        "'\"size\": \"M10\", \"count\": 8', '\"size\": \"M10\", \"count\": 6', part PV-CR-E",
        "'{\"kind\": \"thread\", \"size\": \"M10\", \"count\": 8, \"treat\": \"masked\"}, ', '', part PV-CR-E"
    })
    void tapped_holes_of_the_cradle(String from, String to, @Nullable String about) throws IOException {
        assertThat(PlantedDemo.remarks(folder, "parts/pannier-drive.json", "\"part\": \"PV-CR-E\"", from, to).stream()
                        .filter(remark -> remark.endsWith(": " + Check.MASKS.written()))
                        .distinct())
                .isEqualTo(about == null ? List.of() : List.of(about + ": " + Check.MASKS.written()));
    }

    /** M8 of class 8.8 takes 24.6 Nm, VDI 2230-1; terminals of that stud take 6 Nm and more, IEC 60947-1; both from memory. */
    @ParameterizedTest
    @CsvSource({"12,", "1.4, part LUGGED", "28, part LUGGED"})
    void torque_of_a_terminal(String torque, @Nullable String about) throws IOException {
        String line = Files.readString(Path.of("catalog/parts/common-high-voltage.json"))
                .lines()
                .filter(each -> each.contains("\"torqueNm\": \"14\""))
                .findFirst()
                .orElseThrow();
        String part = line.replaceFirst(".*?\"part\": \"([^\"]+)\".*", "$1");
        assertThat(PlantedDemo.remarks(
                                folder,
                                "parts/common-high-voltage.json",
                                line,
                                line.replaceFirst("\"torqueNm\": \"14\"", "\"torqueNm\": \"" + torque + "\""))
                        .stream()
                        .filter(remark -> remark.endsWith(": " + Check.JOINT_FIGURE.written())))
                .isEqualTo(
                        about == null
                                ? List.of()
                                : List.of(about.replace("LUGGED", part) + ": " + Check.JOINT_FIGURE.written()));
    }

    /** Taps go to about 2.5 diameters, DIN 76-1 for the run-out beside; from memory. */
    @ParameterizedTest
    @CsvSource({"20, 25,", "20, 40, joint pannier-van/column-adaptor"})
    void depth_of_a_tapped_hole(String from, String to, @Nullable String about) throws IOException {
        PlantedDemo.told(
                folder,
                Check.JOINT_FIGURE,
                VAN + "joints.json",
                "\"position\": \"column-adaptor\"",
                "\"depthMm\": " + from,
                "\"depthMm\": " + to,
                about);
    }
}
