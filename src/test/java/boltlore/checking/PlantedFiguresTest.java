package boltlore.checking;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.demo.Demo;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A figure of the demo that is typed wrong is told; one that is only another product's is not. */
class PlantedFiguresTest {

    private static final String VAN = "families/pannier-van/";

    @TempDir
    private Path folder;

    /** Highest and least prevailing torques of ISO 2320, from memory: M8 0.85 to 6 Nm, M10 1.5 to 10.5 Nm. */
    @ParameterizedTest
    @CsvSource({
        "FX-N8, 6, 5.8,",
        "FX-N8, 6, 60, part FX-N8",
        "FX-N8, 6, 0.6, part FX-N8",
        "FX-N10, 10.5, 21, part FX-N10",
        "FX-N10, 10.5, 2,"
    })
    void prevailing_torque(String part, String from, String to, @Nullable String about) throws IOException {
        PlantedDemo.told(
                folder,
                Check.JOINT_FIGURE,
                "parts/common-fixings.json",
                "\"part\": \"" + part + "\"",
                "\"prevailing\": {\"torqueNm\": \"" + from,
                "\"prevailing\": {\"torqueNm\": \"" + to,
                about);
    }

    /** 490 MPa for S235 is of the tables of VDI 2230-1; EN 10025 names the steel by its yield; both from memory. */
    @ParameterizedTest
    @CsvSource({
        "'\"limitMpa\": 490', '\"limitMpa\": 420',",
        "'\"limitMpa\": 490', '\"limitMpa\": 49', joint pannier-van/cradle",
        "'\"limitMpa\": 490', '\"limitMpa\": 980', joint pannier-van/cradle",
        "'\"outerMm\": 24', '\"outerMm\": 30',",
        "'\"outerMm\": 24', '\"outerMm\": 240', joint pannier-van/cradle",
        "'\"holeMm\": \"13.5\"', '\"holeMm\": \"14\"',",
        "'\"holeMm\": \"13.5\"', '\"holeMm\": \"1.35\"', joint pannier-van/cradle"
    })
    void what_a_joint_bears(String from, String to, @Nullable String about) throws IOException {
        Path joints = Path.of("catalog").resolve(VAN + "joints.json");
        List<String> lines = Files.readAllLines(joints);
        int cradle = 0;
        while (!lines.get(cradle).contains("{\"position\": \"cradle\"")) {
            cradle++;
        }
        String before = String.join("\n", lines.subList(cradle, cradle + 4));
        assertThat(PlantedDemo.remarks(folder, VAN + "joints.json", before, before.replace(from, to)))
                .filteredOn(remark -> remark.endsWith(Check.JOINT_FIGURE.written()))
                .isEqualTo(about == null ? List.of() : List.of(about + ": " + Check.JOINT_FIGURE.written()));
    }

    /** IEC 60038, table 1, from memory: 230 V to neutral is 400 V between lines; 120/240 V has three wires. */
    @ParameterizedTest
    @CsvSource({
        "supply, three-phase-16, '\"volts\": 230', '\"volts\": 400', supply three-phase-16",
        "supply, three-phase-16, '\"volts\": 230', '\"volts\": 23', supply three-phase-16",
        "supply, three-phase-16, '400 V between lines', '230/400 V',",
        "supply, three-phase-16, '400 V between lines', '415 V between lines', supply three-phase-16",
        "supply, one-phase-32, '\"volts\": 230', '\"volts\": 240', supply one-phase-32",
        "supply, split-phase-32, '\"volts\": 240', '\"volts\": 120',",
        "market, united-kingdom, '\"volts\": 230', '\"volts\": 400', market united-kingdom",
        "market, united-kingdom, '\"volts\": 230', '\"volts\": 240',"
    })
    void voltage_of_the_mains(String kind, String name, String from, String to, @Nullable String about)
            throws IOException {
        PlantedDemo.told(
                folder, Check.RATING, "workshop/markets.json", "\"" + kind + "\": \"" + name + "\"", from, to, about);
    }

    @ParameterizedTest
    @CsvSource({
        "battery-tank, '\"torqueNm\": \"4\"', '\"torqueNm\": \"2\"',",
        "battery-tank, '\"torqueNm\": \"4\"', '\"torqueNm\": \"0.4\"', joint pannier-van/battery-tank",
        "battery-brackets-left, '\"clampMm\": 12, ', '', joint pannier-van/battery-brackets-left",
        "battery-brackets-left, '\"depthMm\": 18, ', '', joint pannier-van/battery-brackets-left"
    })
    void torque_and_length_of_a_joint(String position, String from, String to, @Nullable String about)
            throws IOException {
        PlantedDemo.told(
                folder, Check.JOINT_FIGURE, VAN + "joints.json", "\"position\": \"" + position + "\"", from, to, about);
    }

    /** M10 has 58.0 mm², class 8.8 has 800 MPa: ISO 898-1, from memory. */
    @ParameterizedTest
    @CsvSource({
        "'\"stressAreaMm2\": \"58\"', '\"stressAreaMm2\": \"57\"',",
        "'\"stressAreaMm2\": \"58\"', '\"stressAreaMm2\": \"580\"', mount pannier-van/drive-mount-rear",
        "'\"ultimateMpa\": \"800\"', '\"ultimateMpa\": \"1600\"', mount pannier-van/drive-mount-rear",
        "'\"ultimateMpa\": \"800\"', '\"ultimateMpa\": \"640\"',"
    })
    void bolts_of_a_mount(String from, String to, @Nullable String about) throws IOException {
        PlantedDemo.told(
                folder, Check.MOUNT_FIGURE, VAN + "driving.json", "\"mount\": \"drive-mount-rear\"", from, to, about);
    }

    /** Regulation (EU) No 1230/2012, annex I, from memory: no axle above the gross mass, both together at least that. */
    @ParameterizedTest
    @CsvSource({
        "1165, 1165, 2400,",
        "1165, 1165, 2466, 'family pannier-van, late'",
        "1165, 1101, 2400,",
        "1165, 1099, 2400, 'family pannier-van, late'",
        "1165, 2401, 2400, 'family pannier-van, late'"
    })
    void axle_limits(String from, String front, String gross, @Nullable String about) throws IOException {
        PlantedDemo.told(
                folder,
                Check.AXLE_LIMITS,
                VAN + "family.json",
                "\"era\": \"late\"",
                "\"axleLimitKg\": {\"front\": " + from + ", \"rear\": 1300}, \"grossKg\": 2400",
                "\"axleLimitKg\": {\"front\": " + front + ", \"rear\": 1300}, \"grossKg\": " + gross,
                about);
    }

    @ParameterizedTest
    @CsvSource({
        "'\"maxGrossKg\": \"320\"', '\"maxGrossKg\": \"350\"',",
        "'\"maxGrossKg\": \"320\"', '\"maxGrossKg\": \"3200\"', crate case-120",
        "'\"tareKg\": \"33\"', '\"tareKg\": \"3.3\"', crate case-120",
        "'\"height\": 745', '\"height\": 1490', crate case-120"
    })
    void crate(String from, String to, @Nullable String about) throws IOException {
        PlantedDemo.told(
                folder, Check.CRATE_FIGURE, "workshop/shipping.json", "\"crate\": \"case-120\"", from, to, about);
    }

    @ParameterizedTest
    @CsvSource({
        "0.87, 0.90,",
        "0.87, 8.7, exchange rate GBP of 2026-09-14",
        "0.87, 1.4, exchange rate GBP of 2026-09-14"
    })
    void exchange_rate(String from, String to, @Nullable String about) throws IOException {
        assertThat(PlantedDemo.remarks(
                        folder, "workshop/pricing.json", "2026-09-14", "\"rate\": \"" + from, "\"rate\": \"" + to))
                .filteredOn(remark -> remark.startsWith("exchange rate"))
                .isEqualTo(about == null ? List.of() : List.of(about + ": " + Check.EXCHANGE_RATE.written()));
    }

    @ParameterizedTest
    @CsvSource({
        "'\"cost\": \"46.00\"', '\"cost\": \"92.00\"',",
        "'\"cost\": \"46.00\"', '\"cost\": \"460.00\"', part CO-FAN1",
        "'\"cost\": \"46.00\"', '\"cost\": \"4.60\"', part CO-FAN1",
        "'\"massKg\": \"0.95\"', '\"massKg\": \"9.5\"', part CO-FAN1"
    })
    void cost_by_the_kilogram(String from, String to, @Nullable String about) throws IOException {
        PlantedDemo.told(
                folder, Check.PRICE_UNLIKE, "parts/common-cooling.json", "\"part\": \"CO-FAN1\"", from, to, about);
    }

    @ParameterizedTest
    @CsvSource({"24, 48,", "24, 240, part CO-FAN1", "24, 2, part CO-FAN1"})
    void lead_days(String from, String to, @Nullable String about) throws IOException {
        PlantedDemo.told(
                folder,
                Check.LEAD_UNLIKE,
                "parts/common-cooling.json",
                "\"part\": \"CO-FAN1\"",
                "\"leadDays\": " + from,
                "\"leadDays\": " + to,
                about);
    }

    @ParameterizedTest
    @CsvSource({
        "'\"cost\": \"3.76\"', '\"cost\": \"4.50\"',",
        "'\"cost\": \"3.76\"', '\"cost\": \"37.60\"', part PV-AB-LH",
        "'\"cost\": \"3.76\"', '\"cost\": \"7.52\"', part PV-AB-LH",
        "'\"setUpMin\": \"9\"', '\"setUpMin\": \"8\"',",
        "'\"runMin\": \"0.79\"', '\"runMin\": \"0.08\"',"
    })
    void cost_of_a_made_part(String from, String to, @Nullable String about) throws IOException {
        PlantedDemo.told(
                folder, Check.MADE_COST, "parts/pannier-controls.json", "\"part\": \"PV-AB-LH\"", from, to, about);
    }

    @ParameterizedTest
    @CsvSource({
        "'\"massKg\": \"0.219\"', '\"massKg\": \"0.20\"',",
        "'\"massKg\": \"0.219\"', '\"massKg\": \"0.05\"', part PV-AB-LH",
        "'\"areaM2\": \"0.029\"', '\"areaM2\": \"0.028\"',",
        "'\"areaM2\": \"0.029\"', '\"areaM2\": \"0.29\"', part PV-AB-LH",
        "'\"thinnest\": 2, \"thickest\": 2', '\"thinnest\": 20, \"thickest\": 20', part PV-AB-LH",
        "'\"length\": 132', '\"length\": 1320', part PV-AB-LH"
    })
    void blank(String from, String to, @Nullable String about) throws IOException {
        PlantedDemo.told(folder, Check.BLANK, "parts/pannier-controls.json", "\"part\": \"PV-AB-LH\"", from, to, about);
    }

    @ParameterizedTest
    @CsvSource({
        "finishes.json, floor-two-coat, '\"specificGravity\": \"1.50\"', '\"specificGravity\": \"1.60\"',",
        "finishes.json, floor-two-coat, '\"specificGravity\": \"1.50\"', '\"specificGravity\": \"3\"', workshop",
        VAN + "joints.json, battery-box\", '\"friction\": \"0.15\"', '\"friction\": \"0.2\"',",
        VAN + "driving.json, drive-mount-rear, '\"leverMm\": \"260\"', '\"leverMm\": \"310\"',",
        VAN + "driving.json, drive-mount-rear, '\"leverMm\": \"260\"', '\"leverMm\": \"2600\"', family pannier-van"
    })
    void windows(String file, String line, String from, String to, @Nullable String about) throws IOException {
        List<String> remarks = new ArrayList<>();
        if (line.endsWith("\"")) {
            remarks.addAll(PlantedDemo.remarks(folder, file, from, to));
        } else {
            remarks.addAll(PlantedDemo.remarks(folder, file, line, from, to));
        }
        assertThat(remarks.stream().distinct().filter(remark -> remark.endsWith(Check.UNUSUAL.written())))
                .isEqualTo(about == null ? List.of() : List.of(about + ": " + Check.UNUSUAL.written()));
    }

    /** Powders for metal cure at 140 to 230 °C (common practice, no source), and a powder cures one way. */
    @ParameterizedTest
    @CsvSource({"180,", "130, finish floor-two-coat", "200, finish floor-two-coat"})
    void cure(String metalC, @Nullable String about) throws IOException {
        assertThat(PlantedDemo.remarks(
                                folder,
                                "finishes.json",
                                "floor-two-coat",
                                "\"metalC\": 180, \"minutes\": 15",
                                "\"metalC\": " + metalC + ", \"minutes\": 15")
                        .stream()
                        .distinct())
                .isEqualTo(about == null ? List.of() : List.of(about + ": " + Check.CURE.written()));
    }

    @ParameterizedTest
    @CsvSource({
        "'\"count\": 4, \"treat\": \"masked\"', '\"count\": 5, \"treat\": \"masked\"',",
        "'\"count\": 4, \"treat\": \"masked\"', '\"count\": 3, \"treat\": \"masked\"', part PV-JBB-E",
        "'\"kind\": \"thread\", \"size\": \"M6\"', '\"kind\": \"thread\", \"size\": \"M8\"', part PV-JBB-E"
    })
    void threads_kept_bare(String from, String to, @Nullable String about) throws IOException {
        assertThat(
                        PlantedDemo.remarks(
                                        folder, "parts/pannier-high-voltage.json", "\"part\": \"PV-JBB-E\"", from, to)
                                .stream()
                                .filter(remark -> remark.endsWith(Check.MASKS.written()))
                                .filter(remark -> remark.startsWith("part PV-JBB-E")))
                .isEqualTo(about == null ? List.of() : List.of(about + ": " + Check.MASKS.written()));
    }

    /** The box is 1112 x 592 mm inside: 3.41 m around, 3.92 m with the most that laps take. */
    @ParameterizedTest
    @CsvSource({"3.6,", "3.4, line pannier-van/battery-seal-later", "36, line pannier-van/battery-seal-later"})
    void seal(String metres, @Nullable String about) throws IOException {
        PlantedDemo.told(
                folder,
                Check.SEAL,
                VAN + "kit/battery.json",
                "\"battery-seal-later\"",
                "\"quantity\": \"3.6\"",
                "\"quantity\": \"" + metres + "\"",
                about);
    }

    @ParameterizedTest
    @CsvSource({"0.6,", "0.7, line pannier-van/drive-breather", "6, line pannier-van/drive-breather"})
    void hose_by_the_metre(String metres, @Nullable String about) throws IOException {
        PlantedDemo.told(
                folder,
                Check.CABLE_LENGTH,
                VAN + "kit/drive.json",
                "\"line\": \"drive-breather\"",
                "\"quantity\": \"0.6\"",
                "\"quantity\": \"" + metres + "\"",
                about);
    }

    @ParameterizedTest
    @CsvSource({"1,", "2, line pannier-van/accelerator-sensor", "10, line pannier-van/accelerator-sensor"})
    void number_that_follows_from_nothing(String quantity, @Nullable String about) throws IOException {
        PlantedDemo.told(
                folder,
                Check.COUNT_OPEN,
                VAN + "kit/low-voltage.json",
                "\"line\": \"accelerator-sensor\"",
                "\"quantity\": \"1\"",
                "\"quantity\": \"" + quantity + "\"",
                about);
    }

    /** Friction of clamped faces: VDI 2230-1 and EN 1090-2, from memory, have 0.1 to 0.5. */
    @Test
    void friction_of_a_joint_ten_times_off() throws IOException {
        assertThat(PlantedDemo.remarks(
                        folder, VAN + "joints.json", "\"friction\": \"0.15\"", "\"friction\": \"0.015\""))
                .contains("family pannier-van: " + Check.UNUSUAL.written());
    }

    @Test
    void each_window_is_one_of_a_figure_that_the_catalogue_has() {
        List<String> records = Stream.of(Demo.catalogue())
                .flatMap(catalogue -> UsualFigures.judged().stream())
                .filter(key -> !has(key))
                .toList();
        assertThat(records).isEmpty();
    }

    private static boolean has(String key) {
        String[] names = key.split("\\.", -1);
        return Stream.of(
                        "",
                        "Driving$",
                        "Braking$",
                        "Cooling$",
                        "Mounting$",
                        "Stores$",
                        "JointFacts$",
                        "Capacity$",
                        "Workshop$")
                .map(outer -> "boltlore.catalogue." + outer + names[0])
                .anyMatch(type -> component(type, names[1]));
    }

    private static boolean component(String type, String name) {
        try {
            return Stream.of(Class.forName(type).getRecordComponents())
                    .anyMatch(of -> of.getName().equals(name));
        } catch (ClassNotFoundException none) {
            return false;
        }
    }

    /** Worked by hand: 612 / 3.52 kWh = 174 for a kWh, a tenth 17; 4180 / 90.1 kW = 46 for a kW, a tenth 4.6. */
    @ParameterizedTest
    @CsvSource({
        "common-high-voltage, BM-44, 612.00, 61.20, part BM-44",
        "common-high-voltage, BM-44, 612.00, 6120.00, part BM-44",
        "common-high-voltage, BM-44, 612.00, 212.00,"
    })
    void the_price_of_a_module_by_the_kWh(String file, String part, String from, String to, @Nullable String about)
            throws IOException {
        String cost = "\"cost\": \"";
        PlantedDemo.told(
                folder,
                Check.PRICE_UNLIKE,
                "parts/" + file + ".json",
                "\"part\": \"" + part + "\"",
                cost + from + "\"",
                cost + to + "\"",
                about);
    }

    @ParameterizedTest
    @CsvSource({"418.00, part DU-90", "2100.00,"})
    void the_price_of_a_drive_unit_by_the_kW(String to, @Nullable String about) throws IOException {
        String file = "parts/common-high-voltage.json";
        PlantedDemo.told(
                folder,
                Check.PRICE_UNLIKE,
                file,
                "\"part\": \"DU-90\"",
                "\"cost\": \"4180.00\"",
                "\"cost\": \"" + to + "\"",
                about);
    }
}
