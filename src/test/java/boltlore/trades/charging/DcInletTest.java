package boltlore.trades.charging;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Bill;
import boltlore.bill.BillMaker;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.choices.Choices;
import boltlore.demo.Barrow;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.findings.Severity;
import boltlore.logic.Deadline;
import boltlore.oracle.Agreement;
import boltlore.oracle.Variants;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.order.json.OrderReader;
import boltlore.proof.Prover;
import boltlore.proof.fits.FitKinds;
import boltlore.resolution.Resolution;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A small family with an inlet for direct current beside the one for alternating current. */
@DisplayName("A DC inlet apart from the AC inlet")
class DcInletTest {

    private static final Path KIT = Path.of("families/tin-barrow/kit/all.json");
    private static final Path FAMILY = Path.of("families/tin-barrow/family.json");
    private static final Path PARTS = Path.of("parts/barrow.json");
    private static final Path FITS = Path.of("families/tin-barrow/fits.json");
    private static final Path ELECTRICS = Path.of("families/tin-barrow/electrics.json");

    private static final String OPTIONS = """
            "options": [
             {"option": "inlet", "role": "inlet", "asks": "Which AC inlet?", "values": [
              {"value": "type-2", "says": "Type 2", "facts": {"phases": 1, "amps": 32}}]},
             {"option": "direct", "role": "dc-inlet", "asks": "Which DC inlet?", "values": [
              {"value": "none", "says": "No DC inlet"},
              {"value": "direct-1", "says": "DC inlet, 60 A", "facts": {"volts": 500, "amps": 60}},
              {"value": "direct-2", "says": "DC inlet, 125 A", "facts": {"volts": 500, "amps": 125}}]},
            """;
    private static final String POSITIONS = """
            "positions": [
             {"position": "pack", "says": "Pack", "subSystem": "drive", "stage": "front", "fill": "one", "lines": [
              {"line": "pack", "part": "TB-PACK", "quantity": "1"}]},
             {"position": "dc-inlet", "says": "DC inlet", "subSystem": "drive", "stage": "front", "fill": "one", "required": {"direct": ["direct-1", "direct-2"]}, "lines": [
              {"line": "dc-inlet-1", "part": "TB-DCI1", "quantity": "1", "when": {"direct": "direct-1"}},
              {"line": "dc-inlet-2", "part": "TB-DCI2", "quantity": "1", "when": {"direct": "direct-2"}}]},
             {"position": "dc-cable", "says": "DC cable", "subSystem": "drive", "stage": "front", "fill": "one", "required": {"direct": ["direct-1", "direct-2"]}, "lines": [
              {"line": "dc-cable", "part": "TB-DCC", "quantity": "1", "when": {"direct": ["direct-1", "direct-2"]}}]},
             {"position": "dc-cap", "says": "Cap", "subSystem": "drive", "stage": "front", "fill": "one", "required": {"direct": "none"}, "lines": [
              {"line": "dc-cap", "part": "TB-CAP", "quantity": "1", "when": {"direct": "none"}}]},
            """;
    private static final String PATHS = """
            {"$schema": "../../schema/fits.schema.json", "paths": [
             {"path": "dc-charging", "flow": "hv-dc", "required": {"direct": ["direct-1", "direct-2"]}, "through": [
              {"position": "dc-inlet", "out": "dc"}, {"position": "dc-cable", "in": "a", "out": "b"}, {"position": "pack", "in": "dc"}]}]}
            """;
    private static final String WIRING = """
            {"$schema": "../../schema/electrics.schema.json",
             "packs": [{"pack": "only", "says": "One module", "module": "TB-PACK", "moduleVolts": "352", "moduleAmpHours": "78", "inSeries": 1, "inParallel": "1",
              "highestVolts": "403", "lowestVolts": "288", "resistanceMilliohm": "22", "usableKwh": "25", "continuousAmps": "150", "peakAmps": "200", "chargeAmps": "100"}],
             "inlets": [{"when": {"inlet": "type-2"}, "proximity": "cable-code"}]}
            """;

    @TempDir
    private Path folder;

    @BeforeEach
    void write() throws IOException {
        Barrow.write(folder);
        change(FAMILY, "\"options\": [", OPTIONS.strip());
        change(KIT, "\"positions\": [", POSITIONS.strip());
        change(
                PARTS,
                "\"parts\": [",
                "\"parts\": [" + part("TB-PACK", port("dc", "female", 125, ", \"blank\": \"TB-CAP\""))
                        + part("TB-DCI1", port("dc", "male", 60, ""))
                        + part("TB-DCI2", port("dc", "male", 125, ""))
                        + part("TB-DCC", port("a", "female", 125, "") + ", " + port("b", "male", 125, ""))
                        + part("TB-CAP", ""));
        Files.writeString(folder.resolve(FITS), PATHS);
        Files.writeString(folder.resolve(ELECTRICS), WIRING);
    }

    private static String part(String number, String ports) {
        return "{\"part\": \"" + number + "\", \"revision\": \"A\", \"name\": \"" + number + "\", \"unit\": \"each\","
                + " \"source\": \"buy\", \"cost\": \"10\", \"massKg\": \"1\", \"bin\": \"M-90-01-A-05\""
                + (ports.isEmpty() ? "" : ", \"ports\": [" + ports + "]") + "},\n";
    }

    private static String port(String name, String half, int amps, String more) {
        return "{\"port\": \"" + name + "\", \"kind\": \"stud-m8\", \"flow\": \"hv-dc\", \"half\": \"" + half
                + "\", \"volts\": \"500\", \"amps\": \"" + amps + "\"" + more + "}";
    }

    private void change(Path file, String from, String to) throws IOException {
        String text = Files.readString(folder.resolve(file));
        assertThat(text).contains(from);
        Files.writeString(folder.resolve(file), text.replace(from, to));
    }

    private Catalogue catalogue() {
        Outcome<Catalogue> outcome = CatalogueReader.read(folder);
        if (outcome instanceof Outcome.Sound<Catalogue> sound) {
            return sound.value();
        }
        throw new AssertionError(outcome.faults().toString());
    }

    private List<String> unfit() {
        Catalogue catalogue = catalogue();
        return Prover.prove(
                        catalogue, catalogue.family("tin-barrow"), FitKinds.all(), Deadline.NONE, Prover.Progress.NONE)
                .defects()
                .filter(defect -> defect.statement().kind().severity() != Severity.NOTE)
                .map(defect -> defect.statement().title())
                .toList();
    }

    private Charging charging(String direct) throws IOException {
        Catalogue catalogue = catalogue();
        String order = Files.readString(folder.resolve("orders/tb-1.json"))
                .replace("\"motor\":", "\"inlet\": \"type-2\", \"direct\": \"" + direct + "\", \"motor\":");
        Outcome<Order> read = OrderReader.parse("tb-1.json", order.getBytes(StandardCharsets.UTF_8), catalogue);
        assertThat(read.faults()).isEmpty();
        Order placed = ((Outcome.Sound<Order>) read).value();
        Agreement agreement = new Agreement(catalogue);
        Resolution.Resolved resolved =
                Agreement.resolved(agreement.resolver().resolve(placed.choices(), new LeftOut.Undecided()));
        Bill bill = BillMaker.make(agreement.resolver().plan("tin-barrow"), placed, resolved);
        return ChargingCalculation.calculate(catalogue.family("tin-barrow").electrics(), bill, null, null);
    }

    @Test
    void is_joined_to_the_pack_in_every_order_that_has_one() {
        assertThat(unfit()).isEmpty();
    }

    @Test
    void that_no_path_leaves_is_found() throws IOException {
        change(FITS, "{\"direct\": [\"direct-1\", \"direct-2\"]}", "{\"direct\": \"direct-2\"}");

        assertThat(unfit()).contains("port leads nowhere: dc-inlet (dc)");
    }

    /** All of the kit is there, or none: what charging promises of a chosen inlet flows along a path. */
    @Test
    void that_can_be_chosen_without_anything_in_the_kit_stops_these_orders() throws IOException {
        change(
                FAMILY,
                "{\"volts\": 500, \"amps\": 125}}]},",
                "{\"volts\": 500, \"amps\": 125}},"
                        + " {\"value\": \"direct-3\", \"says\": \"DC inlet, 200 A\", \"facts\": {\"volts\": 500, \"amps\": 200}}]},");

        assertThat(unfit()).contains("device without its path: direct (direct-3)");
    }

    @Test
    void whose_port_is_rated_for_another_current_is_no_path_of_it() throws IOException {
        change(FAMILY, "{\"volts\": 500, \"amps\": 60}", "{\"volts\": 500, \"amps\": 61}");

        assertThat(unfit()).contains("device without its path: direct (direct-1)");
    }

    @Test
    void whose_cable_bears_less_than_a_post_gives_is_found() throws IOException {
        change(PARTS, port("a", "female", 125, ""), port("a", "female", 60, ""));

        assertThat(unfit()).containsExactly("port below what flows: dc-cable/a (dc-charging, 125 A)");
    }

    @Test
    void charges_with_the_least_of_what_it_and_the_pack_take() throws IOException {
        assertThat(charging("direct-1").dc().amps()).isEqualByComparingTo("60");
        assertThat(charging("direct-2").dc().amps()).isEqualByComparingTo("100");
        assertThat(charging("direct-2").dc().limits()).startsWith("The pack limits");
        assertThat(charging("none").dc()).isNull();
    }

    @Test
    void for_less_than_the_pack_has_stops_the_order() throws IOException {
        change(FAMILY, "{\"volts\": 500, \"amps\": 60}", "{\"volts\": 400, \"amps\": 60}");

        assertThat(charging("direct-1").findings().all())
                .extracting(Finding::kind)
                .contains(ChargingFinding.PACK_ABOVE_INLET);
        assertThat(charging("direct-2").findings().all())
                .extracting(Finding::kind)
                .doesNotContain(ChargingFinding.PACK_ABOVE_INLET);
    }

    @Test
    void beside_contacts_for_direct_current_in_the_other_inlet_is_for_somebody_to_look_at() throws IOException {
        change(
                ELECTRICS,
                "\"proximity\": \"cable-code\"",
                "\"proximity\": \"cable-code\", \"direct\": {\"volts\": \"500\", \"amps\": \"80\"}");

        assertThat(charging("direct-2").findings().all())
                .extracting(Finding::kind)
                .contains(ChargingFinding.TWO_DIRECT_INLETS);
        assertThat(charging("none").findings().all())
                .extracting(Finding::kind)
                .doesNotContain(ChargingFinding.TWO_DIRECT_INLETS);
        assertThat(charging("none").dc().amps()).isEqualByComparingTo("80");
    }

    @Test
    void is_resolved_alike_by_rules_and_by_an_independent_reading() {
        Agreement agreement = new Agreement(catalogue());
        List<Choices> all = new Variants(catalogue().family("tin-barrow")).all();

        assertThat(all).hasSize(3 * 3 * 6);
        all.forEach(agreement::on);
    }
}
