package boltlore.trades.charging;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Bill;
import boltlore.bill.BillMaker;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.logic.Deadline;
import boltlore.oracle.Agreement;
import boltlore.oracle.Variants;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.proof.Answer;
import boltlore.proof.KitView;
import boltlore.proof.Prover;
import boltlore.resolution.Resolution;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("What charging finds of a kit is asked of every valid order before:")
class ChargingKindsTest {

    private static final String VAN = "pannier-van";
    private static final int SOME = 40;

    @TempDir
    private Path folder;

    private static String title(Finding finding) {
        return finding.kind().code() + ": " + finding.subject();
    }

    private Catalogue changed(String family, String... fromTo) throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("catalog"))) {
            for (Path each : files.filter(Files::isRegularFile).toList()) {
                Path there = folder.resolve(Path.of("catalog").relativize(each));
                Files.createDirectories(there.getParent());
                Files.copy(each, there);
            }
        }
        Path electrics = folder.resolve("families/" + family + "/electrics.json");
        String text = Files.readString(electrics);
        for (int at = 0; at < fromTo.length; at += 2) {
            assertThat(text).contains(fromTo[at]);
            text = text.replace(fromTo[at], fromTo[at + 1]);
        }
        Files.writeString(electrics, text);
        Outcome<Catalogue> read = CatalogueReader.read(folder);
        assertThat(read.faults()).isEmpty();
        return ((Outcome.Sound<Catalogue>) read).value();
    }

    private static List<Answer.Defect> defects(Catalogue catalogue, String family) {
        return Prover.prove(
                        catalogue, catalogue.family(family), ChargingKinds.all(), Deadline.NONE, Prover.Progress.NONE)
                .defects()
                .toList();
    }

    /** What the trade itself finds of the kit of that order. */
    private static Stream<Finding> ofKit(Agreement agreement, Choices choices) {
        Resolution.Resolved resolved =
                Agreement.resolved(agreement.resolver().resolve(choices, new LeftOut.Undecided()));
        Family family = choices.family();
        Bill bill = BillMaker.make(agreement.resolver().plan(family.name()), Order.draft(choices), resolved);
        return ChargingCalculation.calculate(family.electrics(), bill, null, null).findings().all().stream()
                .filter(finding -> ((ChargingFinding) finding.kind()).proved());
    }

    @ParameterizedTest
    @ValueSource(strings = {VAN, "stook-pickup"})
    void no_order_of_the_demo_has_any_of_it(String family) throws IOException {
        assertThat(defects(changed(family), family)).isEmpty();
    }

    /** Each is worked out by hand: 90,101 W / (0.91 × 288 V) = 343.8 A; 403.2 V / 0.01 Ω = 40.3 kA; 820 µF and more at 403.2 V. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"fuse\": \"main-400\", \"fuseAfterMm\": 0, \"cable\": \"HV-W95\" | \"fuse\": \"main-400\", \"fuseAfterMm\": 0, \"cable\": \"HV-W50\" | load above cable: Junction box to drive unit",
                "\"fuse\": \"main-300\", \"says\": \"Main fuse, 300 A\", \"part\": \"HV-F300\", \"amps\": \"300\" | \"fuse\": \"main-300\", \"says\": \"Main fuse, 300 A\", \"part\": \"HV-F300\", \"amps\": \"400\" | fuse above cable: Battery to junction box",
                "\"resistanceMilliohm\": \"46\" | \"resistanceMilliohm\": \"10\" | short circuit above fuse: Battery to junction box",
                "\"chargeAmps\": \"117\" | \"chargeAmps\": \"30\" | charge current above pack: Charger",
                "\"highestVolts\": \"430\" | \"highestVolts\": \"400\" | pack outside charger: Charger",
                "\"direct\": {\"volts\": \"500\", \"amps\": \"200\"} | \"direct\": {\"volts\": \"400\", \"amps\": \"200\"} | pack above inlet: Inlet",
                "\"abortAfterSeconds\": \"0.3\" | \"abortAfterSeconds\": \"0.15\" | precharge aborted: Contactor",
                "\"pulseJoule\": \"1200\" | \"pulseJoule\": \"1000\" | precharge shorted: Shorted link",
                "\"yNanofarad\": \"400\" | \"yNanofarad\": \"3000\" | y energy: Y capacitors",
                "\"fuse\": \"compressor-20\", \"fuseAfterMm\": 0, \"cable\" | \"cable\" | not protected: Junction box to compressor",
                "\"dropPercent\": \"3\" | \"dropPercent\": \"1\" | drop above limit: 12 V, converter to main fuse",
                "\"isolatedBy\": \"charger-isolation\" | \"isolatedBy\": \"export-transformer\" | shared pins: Inlet",
                "{\"when\": {\"export\": \"nema-5-15\"}, \"residual\" | {\"when\": {\"export\": \"none\"}, \"residual\" | not given once: guard of the V2L outlet",
                "\"loadAmps\": \"13\", \"feeds\": {\"chosen\": \"outlet\"} | \"loadAmps\": \"13\" | load not derived: Charger to V2L outlet",
                "\"part\": \"CC-22\", \"phases\": 1, \"amps\": \"32\", \"wireAmps\": \"32\" | \"part\": \"CC-22\", \"phases\": 1, \"amps\": \"32\", \"wireAmps\": \"31\" | lead above its wires: CC-22"
            })
    void a_defect_comes_with_an_order_that_shows_it_in_its_kit_as_well(String from, String to, String title)
            throws IOException {
        Catalogue catalogue = changed(VAN, from, to);
        Agreement agreement = new Agreement(catalogue);
        List<Answer.Defect> defects = defects(catalogue, VAN);

        assertThat(defects).extracting(defect -> defect.statement().title()).contains(title);
        for (Answer.Defect defect : defects) {
            assertThat(ofKit(agreement, defect.witness().orElseThrow()))
                    .as(defect.statement().title())
                    .anySatisfy(finding -> {
                        assertThat(title(finding)).isEqualTo(defect.statement().title());
                        assertThat(finding.says()).isEqualTo(defect.statement().refuted());
                    });
        }
    }

    @ParameterizedTest
    @DisplayName(
            "a port at the end of a cable bears the load: 2,500 W / (0.94 × 288 V) = 9.2 A, 2,500 W / 13.9 V = 179.9 A")
    @CsvSource({
        "DU-90, 400, 343, true",
        "DU-90, 400, 344, false",
        "HV-DC1, 20, 9, true",
        "HV-DC1, 20, 10, false",
        "LV-FH, 250, 179, true"
    })
    void a_port_below_the_load(String number, String amps, String less, boolean found) throws IOException {
        changed(VAN);
        try (Stream<Path> files = Files.list(folder.resolve("parts"))) {
            for (Path file : files.toList()) {
                String text = Files.readString(file);
                Files.writeString(
                        file,
                        text.replaceFirst(
                                "(\\{\"part\": \"" + number + "\", \"revision\".*?\"amps\": )\"" + amps + "\"",
                                "$1\"" + less + "\""));
            }
        }
        Outcome<Catalogue> read = CatalogueReader.read(folder);
        assertThat(read.faults()).isEmpty();
        Catalogue catalogue = ((Outcome.Sound<Catalogue>) read).value();
        assertThat(defects(catalogue, VAN).stream()
                        .filter(defect -> defect.statement().kind().name().equals("load above port")))
                .hasSize(found ? 1 : 0);
    }

    @Test
    void cases_and_kits_agree_on_orders_all_over_a_family_with_many_faults() throws IOException {
        Catalogue catalogue = changed(
                VAN,
                "\"lowestVolts\": \"288\", \"resistanceMilliohm\": \"46\"",
                "\"lowestVolts\": \"250\", \"resistanceMilliohm\": \"10\"",
                "\"dropPercent\": \"3\"",
                "\"dropPercent\": \"0.5\"",
                "\"abortAfterSeconds\": \"0.3\"",
                "\"abortAfterSeconds\": \"0.17\"",
                "\"yJoule\": \"0.2\"",
                "\"yJoule\": \"0.05\"",
                "\"amps\": \"64\"",
                "\"amps\": \"20\"");
        Agreement agreement = new Agreement(catalogue);
        Family family = catalogue.family(VAN);
        List<ChargingCases.Case> cases = new ChargingCases(KitView.of(catalogue, family, false, Deadline.NONE)).all();
        Set<String> met = new TreeSet<>();
        for (Choices order : new Variants(family).spread(SOME)) {
            Set<String> kit =
                    ofKit(agreement, order).map(ChargingKindsTest::title).collect(Collectors.toSet());
            assertThat(cases.stream()
                            .filter(each -> Conditions.holds(each.when().orElseThrow(), order))
                            .map(each -> title(each.finding()))
                            .collect(Collectors.toSet()))
                    .as(order.toString())
                    .isEqualTo(kit);
            met.addAll(kit);
        }
        assertThat(met).hasSizeGreaterThan(10);
    }
}
