package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Checking a catalogue finds, before any order does,")
class CheckElectricsTest {

    private static final String CABLES = "parts/pannier-high-voltage.json";
    private static final String ELECTRICS = "families/pannier-van/electrics.json";

    @TempDir
    private Path folder;

    private String check(String file, String from, String to) throws IOException {
        Path catalogue = ChangedCatalogue.in(folder, file, from, to);
        return boltlore("check", catalogue).out().replaceAll("\\s+", " ");
    }

    @ParameterizedTest
    @DisplayName("high-voltage data that some order has twice, or not at all, or other than its kit")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"when\": {\"battery\": \"one-string\"}, \"module\" | \"module\" | two of pack for some order",
                "\"when\": {\"battery\": \"two-strings\"}, \"module\" | \"when\": {\"battery\": \"two-strings\", \"market\": \"europe\"}, \"module\" | no pack for some order",
                "{\"when\": {\"inlet\": \"j3400\"} | {\"when\": {\"inlet\": \"type-1\"} | no inlet for some order",
                "{\"part\": \"HV-CB400\", \"when\": {\"drive-unit\": \"60-kw\"} | {\"part\": \"HV-CB400\", \"when\": {\"drive-unit\": \"90-kw\"} | no precharge resistor for some order",
                "{\"when\": {\"charger\": [\"seven\", \"seven-two-way\"]}, \"efficiencyPercent\" | {\"when\": {\"charger\": \"seven\"}, \"efficiencyPercent\" | no on-board charger for some order",
                "\"inSeries\": 8, \"inParallel\": 2 | \"inSeries\": 8, \"inParallel\": 3 | 16 of BM-44 in some kit"
            })
    void electrics(String from, String to, String found) throws IOException {
        assertThat(check(ELECTRICS, from, to)).contains("electrics pannier-van").contains(found);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"part\": \"HV-W95\", \"perMetre\": \"2\"}, {\"part\": \"HV-W50\", \"perMetre\": \"2\"} | HV-W95 and HV-W50 in one cable",
                "{\"part\": \"HV-W95\", \"perMetre\": \"1\"} | found 1 × HV-W95 side by side",
                "{\"part\": \"HV-W95\", \"quantity\": \"2.62\"} | found 1 × HV-W95 side by side",
                "{\"part\": \"HV-W95\", \"quantity\": \"5.24\"} | ",
                "{\"part\": \"HV-T95\", \"quantity\": \"2\"} | found no conductor that electrics.json knows",
                "{\"part\": \"HV-W95\", \"perMetre\": \"2\"} | ",
                "{\"part\": \"HV-W95\", \"perMetre\": \"4\"} | "
            })
    void conductors_of_a_cable(String contains, @Nullable String found) throws IOException {
        Path catalogue = ChangedCatalogue.in(folder, CABLES, "\"PV-HD-BL\"", "\"PV-HD-BL\"");
        Path parts = catalogue.resolve(CABLES);
        Files.writeString(
                parts,
                Files.readString(parts)
                        .replaceFirst(
                                "(\"PV-HD-BL\", \"revision.*?)\\{\"part\": \"HV-W95\", \"perMetre\": \"2\"}",
                                "$1" + contains));
        String said = boltlore("check", catalogue).out().replaceAll("\\s+", " ");
        if (found == null) {
            assertThat(said).doesNotContain("PV-HD-BL");
        } else {
            assertThat(said).contains("PV-HD-BL").contains(found);
        }
    }

    @Test
    @DisplayName("a high-voltage cable that no branch names, so that nobody looks at its fuse")
    void a_cable_without_a_branch() throws IOException {
        Path catalogue =
                ChangedCatalogue.in(folder, ELECTRICS, "Junction box to compressor", "Junction box to compressor");
        Path electrics = catalogue.resolve(ELECTRICS);
        Files.writeString(
                electrics,
                Files.readString(electrics)
                        .replaceFirst("  \\{\"branch\": \"compressor\".*\n", "")
                        .replace(", \"branch\": \"compressor\"", "")
                        .replace("\"compressor\", \"heater-water\"", "\"heater-water\""));

        assertThat(boltlore("check", catalogue).out().replaceAll("\\s+", " "))
                .contains("position pannier-van/cable-compressor: found a high-voltage cable that no branch");
        assertThat(boltlore("check").out()).contains("The data is consistent.");
    }

    @Test
    @DisplayName("a lithium battery that would travel under the number of another")
    void lithium_as_other_goods() throws IOException {
        assertThat(check("parts/common-high-voltage.json", "\"un\": \"UN 3480\"", "\"un\": \"UN 2794\""))
                .contains("part BM-44: found 'UN 2794' for a lithium battery by its customs code or its caution");
    }

    @Test
    void modules_that_a_line_brings_too_many_of() throws IOException {
        assertThat(check(
                        "families/pannier-van/kit/battery.json",
                        "\"part\": \"BM-44\", \"quantity\": \"8\", \"expects\"",
                        "\"part\": \"BM-44\", \"quantity\": \"9\", \"expects\""))
                .contains("9 of BM-44 in some kit")
                .contains("17 of BM-44 in some kit");
    }

    @ParameterizedTest
    @DisplayName("torques that no table gives for their thread and class")
    @CsvSource({"240, found 240 Nm for M12", "8.4, found 8.4 Nm for M12"})
    void torques(String torqueNm, String found) throws IOException {
        assertThat(check("parts/common-fixings.json", "\"torqueNm\": \"84\"", "\"torqueNm\": \"" + torqueNm + "\""))
                .contains(found)
                .contains(
                        "expected about 83.6 Nm, which uses 90 % of the yield: at least 90 % of it, at most 2 % more.");
    }

    @Test
    void a_fuse_above_the_cable_behind_it() throws IOException {
        assertThat(check(
                        ELECTRICS, "\"part\": \"HV-JB1\", \"amps\": \"20\"", "\"part\": \"HV-JB1\", \"amps\": \"200\""))
                .contains("branch pannier-van/converter: found fuse above cable: Junction box to DC-DC converter: 200 A"
                        + " fuse on a cable rated 57.6 A as installed;");
    }

    @Test
    void a_cable_of_the_pack_without_a_fuse() throws IOException {
        assertThat(check(
                        ELECTRICS,
                        "\"heater-air\"]}, \"fuse\": \"main-400\", \"fuseAfterMm\": 0,",
                        "\"heater-air\"]},"))
                .contains("branch pannier-van/battery-90-kw: found not protected: Battery to junction box: no fuse")
                .doesNotContain("branch pannier-van/drive-90-kw");
    }

    @Test
    @DisplayName("a drive of 90 kW on a cable of 310 A: 90,101 W / (0.91 × 288 V) = 343.8 A")
    void a_load_that_is_worked_out() throws IOException {
        assertThat(check(
                        ELECTRICS,
                        "\"driveUnit\": \"DU-90\"}, \"fuse\": \"main-400\", \"fuseAfterMm\": 0, \"cable\": \"HV-W95\"",
                        "\"driveUnit\": \"DU-90\"}, \"fuse\": \"main-400\", \"fuseAfterMm\": 0, \"cable\": \"HV-W50\""))
                .contains("branch pannier-van/drive-90-kw: found load above cable: Junction box to drive unit: load of"
                        + " 343.8 A on a cable with a current rating as installed of 310 A")
                .doesNotContain("branch pannier-van/battery-90-kw");
    }

    @Test
    void a_load_that_is_only_declared() throws IOException {
        assertThat(check(
                        ELECTRICS,
                        "\"feeds\": {\"watts\": \"3000\", \"efficiencyPercent\": \"95\"}",
                        "\"loadAmps\": \"1\""))
                .contains("branch pannier-van/compressor: found load not derived: Junction box to compressor: 1 A are"
                        + " declared only");
    }

    @ParameterizedTest
    @DisplayName("contacts that an inlet shares between alternating and direct current, and no contactors that isolate")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                ", \"isolatedBy\": \"charger-isolation\" | `` | shared contacts for direct and alternating current, and no contactors",
                "\"charger-isolation\" | \"three-phase-contactor\" | position 'three-phase-contactor' empty in some order"
            })
    void shared_contacts(String from, String to, String found) throws IOException {
        assertThat(check(ELECTRICS, from, to)).contains("inlet pannier-van: found " + found);
    }

    @Test
    void a_part_of_the_hand_that_its_line_does_not_ask_for() throws IOException {
        assertThat(check(
                        "families/pannier-van/kit/controls.json",
                        "\"part\": \"PV-PB-LH\", \"quantity\": \"1\", \"when\": {\"drive-side\": \"left\"}",
                        "\"part\": \"PV-PB-LH\", \"quantity\": \"1\", \"when\": {\"drive-side\": \"right\"}"))
                .contains("line pannier-van/pedal-box-left: found PV-PB-LH, the left hand of pair 'pedal-box'; expected"
                        + " the other hand, for only orders with drive-side=right call for the line.");
    }

    @ParameterizedTest
    @DisplayName("parts that bear high voltage and say nothing of it, whatever says that they do")
    @CsvSource(
            delimiter = '|',
            value = {
                "CI-T1 | it stands at pannier-van/inlet, where test 'isolation-mains' asks for mains-isolation",
                "HV-F300 | electrics.json of pannier-van names it",
                "HV-JB1 | it has high-voltage connectors"
            })
    void cautions(String part, String because) throws IOException {
        Path catalogue = ChangedCatalogue.in(folder, ELECTRICS, "\"buses\"", "\"buses\"");
        withoutCautions(catalogue, part);
        assertThat(boltlore("check", catalogue).out().replaceAll("\\s+", " "))
                .contains("part " + part + ": found no caution 'high-voltage'; expected that caution, for " + because);
    }

    /** Voltage class A up to 60 V: ISO 6469-3 and UN Regulation 100; from memory. */
    @ParameterizedTest
    @DisplayName(
            "but asks for no caution for high voltage of a cable of 60 V that stands in no branch yet, as of one of 1000 V")
    @CsvSource({"60, false", "1000, true"})
    void no_caution(String volts, boolean asked) throws IOException {
        String unused =
                "{\"cable\": \"LV-CON13\", \"areaMm2\": \"25\", \"ohmPerKm\": \"0.78\", \"hottestC\": 105, \"volts\": \""
                        + volts + "\", \"amps\": \"150\", \"assumed\": \"clipped\", \"kFactor\": \"115\"},";
        String cables = "\"cables\": [";
        String said = check(ELECTRICS, cables, cables + unused);
        if (asked) {
            assertThat(said).contains("part LV-CON13: found no caution 'high-voltage'");
        } else {
            assertThat(said).doesNotContain("no caution 'high-voltage'");
        }
    }

    /** Areas and resistances: IEC 60228, class 5; what lies within a table's row is left to the data sheet. */
    @ParameterizedTest
    @DisplayName("figures of a cable that no copper of that area has")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"ohmPerKm\": \"0.386\" | \"ohmPerKm\": \"0.0386\" | cable pannier-van/HV-W50: found 0.0386 Ω/km for 50 mm²; expected from 0.3448 (solid copper) to 0.393 Ω/km",
                "\"ohmPerKm\": \"0.386\" | \"ohmPerKm\": \"0.4\" | cable pannier-van/HV-W50: found 0.4 Ω/km",
                "\"ohmPerKm\": \"0.386\" | \"ohmPerKm\": \"0.387\" | cable stook-pickup/HV-W50: found other figures than in another family",
                "\"areaMm2\": \"50\" | \"areaMm2\": \"95\" | cable pannier-van/HV-W50: found 0.386 Ω/km for 95 mm²",
                "\"hottestC\": 125, \"volts\": \"1000\", \"amps\": \"64\" | \"hottestC\": 125, \"volts\": \"1000\", \"amps\": \"640\" | cable pannier-van/HV-W6: found 640 A for 6 mm²; expected at most 87 A",
                "\"amps\": \"310\", | \"amps\": \"350\", | cable pannier-van/HV-W50: found 350 A for 50 mm²",
                "copper up to 90 °C\", \"kFactor\": \"143\" | copper up to 90 °C\", \"kFactor\": \"226\" | cable pannier-van/HV-W3X2: found 'kFactor' 226"
            })
    void figures_of_a_cable(String from, String to, String found) throws IOException {
        assertThat(check(ELECTRICS, from, to)).contains(found);
    }

    @ParameterizedTest
    @DisplayName(
            "a pack that no lithium cells make, or that does not follow from its modules in series and side by side")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"resistanceMilliohm\": \"46\" | \"resistanceMilliohm\": \"460\" | pack pannier-van/two-strings: found 'resistanceMilliohm' at 20.91 % of the nominal voltage",
                "\"resistanceMilliohm\": \"46\" | \"resistanceMilliohm\": \"92\" | pack pannier-van/two-strings: found 'resistanceMilliohm' that comes to 23 for each module or string; expected 11.5",
                "\"resistanceMilliohm\": \"92\" | \"resistanceMilliohm\": \"9.2\" | pack pannier-van/one-string: found 'resistanceMilliohm' at 0.21 %",
                "\"lowestVolts\": \"288\", \"resistanceMilliohm\": \"92\" | \"lowestVolts\": \"348\", \"resistanceMilliohm\": \"92\" | pack pannier-van/one-string: found 'lowestVolts' at 98.86 %",
                "\"usableKwh\": \"25\" | \"usableKwh\": \"12\" | pack pannier-van/one-string: found 'usableKwh' at 42.61 % of the nominal energy",
                "\"peakAmps\": \"600\" | \"peakAmps\": \"900\" | pack pannier-van/two-strings: found 'peakAmps' that comes to 450 for each module or string; expected 300",
                "\"chargeAmps\": \"117\" | \"chargeAmps\": \"1170\" | pack pannier-van/one-string: found 'chargeAmps' at 1462.5 %"
            })
    void figures_of_a_pack(String from, String to, String found) throws IOException {
        assertThat(check(ELECTRICS, from, to)).contains(found);
    }

    @ParameterizedTest
    @DisplayName("limits that are wider than standards or common practice have them")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"yJoule\": \"0.2\" | \"yJoule\": \"0.5\" | electrics pannier-van/limits: found 'yJoule' 0.5; expected at most 0.2 J",
                "\"unfusedMm\": 300 | \"unfusedMm\": 3000 | electrics pannier-van/limits: found 'unfusedMm' 3000; expected at most 1000 mm",
                "\"dropPercent\": \"3\" | \"dropPercent\": \"30\" | electrics pannier-van/limits: found 'dropPercent' 30",
                "\"withinMilliseconds\": 300 | \"withinMilliseconds\": 900 | electrics pannier-van/outlet: found 'withinMilliseconds' 900; expected at most 300 ms",
                "\"microfarad\": \"820\" | \"microfarad\": \"0.82\" | electrics pannier-van/capacitor inverter-90-kw: found 'microfarad' 0.82",
                "\"microfarad\": \"820\" | \"microfarad\": \"8200\" | electrics pannier-van/capacitor inverter-90-kw: found 'microfarad' 8200",
                "\"yNanofarad\": \"400\" | \"yNanofarad\": \"4000\" | electrics pannier-van/capacitor inverter-90-kw: found 'yNanofarad' 4000"
            })
    void wide_limits(String from, String to, String found) throws IOException {
        assertThat(check(ELECTRICS, from, to)).contains(found);
    }

    @ParameterizedTest
    @DisplayName("and lets what is only near them be")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"unfusedMm\": 300 | \"unfusedMm\": 1000",
                "\"dropPercent\": \"3\" | \"dropPercent\": \"5\"",
                "\"yJoule\": \"0.2\" | \"yJoule\": \"0.1999\"",
                "\"resistanceMilliohm\": \"46\" | \"resistanceMilliohm\": \"48\"",
                "\"lowestVolts\": \"288\" | \"lowestVolts\": \"300\""
            })
    void near_limits(String from, String to) throws IOException {
        assertThat(check(ELECTRICS, from, to)).contains("The data is consistent.");
    }

    @Test
    void nothing_where_nothing_was_changed() throws IOException {
        assertThat(check(ELECTRICS, "\"buses\"", "\"buses\"")).contains("The data is consistent.");
    }

    private static void withoutCautions(Path catalogue, String part) throws IOException {
        try (Stream<Path> files = Files.list(catalogue.resolve("parts"))) {
            for (Path file : files.toList()) {
                String text = Files.readString(file);
                Files.writeString(
                        file,
                        text.replaceAll(
                                "(\\{\"part\": \"" + part + "\", \"revision\".*)\"cautions\": \\[[^]]*], ", "$1"));
            }
        }
    }
}
