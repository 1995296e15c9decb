package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The fixings of the demo's orders, and what the workshop gets of them. */
class FixingsCommandTest {

    private static final String FIRST = "catalog/orders/bl-1001.json";
    private static final String OTHER_FAMILY = "catalog/orders/bl-2001.json";
    private static final String STOPPED = "catalog/orders/bl-1006.json";
    private static final String PARTS = "parts/common-fixings.json";
    private static final String JOINTS = "families/pannier-van/joints.json";

    @TempDir
    private Path folder;

    private Path out() {
        return folder.resolve("out");
    }

    private static JsonNode joints(JsonNode order) {
        return order.get("reports").get(0).get("tables").get("joints");
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void tells_each_joint_with_its_torque_and_what_the_torque_stands_for() {
        Ran ran = boltlore("fixings", FIRST, OTHER_FAMILY, "--out", out());
        assertThat(ran.exit()).as("%s", ran).isZero();
        assertThat(flat(ran.out()))
                .contains("Cradle 6 M12 × 90, 8.8 84.0 0.12 15.5 99.5 yes")
                .contains("Torque tables to VDI 2230, 90 % of yield")
                .contains("2 sheets written to ");
        assertThat(out().resolve("BL-1001/fixings.xlsx")).isRegularFile();
        assertThat(out().resolve("BL-2001/csv")).isDirectory();
    }

    @Test
    void every_torque_in_the_answer_for_programs_has_its_table_and_friction() throws IOException {
        JsonNode order = new ObjectMapper()
                .readTree(boltlore("fixings", FIRST, "--json", "--out", out()).out())
                .get("orders")
                .get(0);
        assertThat(order.get("stops").asBoolean()).isFalse();
        assertThat(joints(order))
                .hasSizeGreaterThan(50)
                .anySatisfy(joint -> assertThat(joint.get("torque").isNumber()).isTrue())
                .allSatisfy(joint -> assertThat(joint.get("torque").isNull())
                        .isEqualTo(joint.get("torque-table").isNull())
                        .isEqualTo(joint.get("friction").isNull()));
    }

    @Test
    void the_workbook_read_by_another_reader_has_a_row_to_sign_for_each_safety_joint() throws IOException {
        JsonNode joints = joints(new ObjectMapper()
                .readTree(boltlore("fixings", FIRST, "--json", "--out", out()).out())
                .get("orders")
                .get(0));
        long safety = 0;
        for (JsonNode joint : joints) {
            safety += joint.get("to-sign").isNull() ? 0 : 1;
        }
        byte[] xlsx = Files.readAllBytes(out().resolve("BL-1001/fixings.xlsx"));
        List<Row> rows;
        try (ReadableWorkbook workbook = new ReadableWorkbook(new ByteArrayInputStream(xlsx))) {
            rows = workbook.findSheet("Signed joints").orElseThrow().read().stream()
                    .filter(row -> row.stream()
                            .filter(Objects::nonNull)
                            .anyMatch(cell -> cell.getText().matches("M\\d+ × \\d+, .*")))
                    .toList();
        }
        assertThat(rows).hasSize((int) safety);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "parts/common-fixings.json | \"lengthMm\": 90, \"propertyClass\": \"8.8\" | \"lengthMm\": 90, \"propertyClass\": \"A2-70\" | bolts of class A2-70.",
                "parts/common-fixings.json | \"lengthMm\": 90, \"propertyClass\": \"8.8\" | \"lengthMm\": 85, \"propertyClass\": \"8.8\" | 15 mm of the bolt are left for the nut. Nut and two threads proud take 15.5 mm.",
                "parts/common-fixings.json | \"lengthMm\": 25, \"propertyClass\": \"8.8\", \"torqueNm\": \"24.6\" | \"lengthMm\": 25, \"propertyClass\": \"8.8\", \"torqueNm\": \"2.46\" | 2.46 Nm is far below the 24.6 Nm computed",
                "parts/common-fixings.json | \"lengthMm\": 35, \"propertyClass\": \"8.8\", \"torqueNm\": \"48\" | \"lengthMm\": 35, \"propertyClass\": \"8.8\", \"torqueNm\": \"4.8\" | Propshaft: 4.8 Nm is far below the 48.4 Nm computed",
                "families/pannier-van/joints.json | \"limitMpa\": 490, \"outerMm\": 20 | \"limitMpa\": 120, \"outerMm\": 20 | MPa under the heads, and S235 bears 120 MPa",
                "families/pannier-van/joints.json | \"position\": \"torque-arms\", \"safety\": true, \"clampMm\": 18 | \"position\": \"torque-arms\", \"safety\": true, \"clampMm\": 24 | only 11 mm of thread hold in steel. At least 12 mm are needed.",
                "families/pannier-van/joints.json | \"position\": \"torque-arms\", \"safety\": true, \"clampMm\": 18 | \"position\": \"torque-arms\", \"safety\": true, \"clampMm\": 12 | so it bottoms before it clamps."
            })
    void a_joint_that_is_wrong_is_told_and_ends_with_another_code(String file, String from, String to, String says)
            throws IOException {
        Path catalogue = ChangedCatalogue.in(folder, file, from, to);
        Ran ran = boltlore("fixings", FIRST, "--catalogue", catalogue, "--out", out());
        assertThat(ran.exit()).as("%s", ran).isEqualTo(Exit.STOPPED);
        assertThat(flat(ran.out())).contains("Stop, fixings: ").contains(says);
        assertThat(out().resolve("BL-1001/fixings.xlsx")).isRegularFile();
    }

    @Test
    void a_torque_alone_is_refused_with_its_place() throws IOException {
        Path catalogue = ChangedCatalogue.in(
                folder,
                PARTS,
                "\"torqueNm\": \"84\", \"torqueTable\": \"to VDI 2230, 90 % of yield\",",
                "\"torqueNm\": \"84\",");
        Ran ran = boltlore("fixings", FIRST, "--catalogue", catalogue, "--out", out());
        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("common-fixings.json").contains("a torque alone");
    }

    @Test
    void a_family_without_joints_has_nothing_to_sign_for_and_stops_where_something_heavy_hangs() throws IOException {
        Path catalogue = ChangedCatalogue.in(folder, JOINTS, "\"joints\"", "\"joints\"");
        Files.delete(catalogue.resolve(JOINTS));
        Ran ran = boltlore("fixings", FIRST, "--catalogue", catalogue, "--out", out());
        assertThat(ran.exit()).as("%s", ran).isEqualTo(Exit.STOPPED);
        assertThat(flat(ran.out())).contains("Stop, kit: Heavy joint not named: Battery box (battery-box)");
    }

    @Test
    void an_order_that_something_stops_is_told_and_the_others_are_listed() {
        Ran ran = boltlore("fixings", STOPPED, FIRST, "--out", out());
        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(out().resolve("BL-1001")).isDirectory();
        assertThat(out().resolve("BL-1006")).doesNotExist();
    }

    @Test
    void no_order_that_has_fixings_to_list() {
        Ran ran = boltlore("fixings", STOPPED, "--out", out());
        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(ran.out()).contains("No order of these has fixings to list.");
    }

    @Test
    void the_same_bytes_on_every_run() {
        boltlore("fixings", FIRST, "--out", folder.resolve("one"));
        boltlore("fixings", FIRST, "--out", folder.resolve("other"));
        for (String file : List.of("fixings.xlsx", "json/fixings.json")) {
            assertThat(folder.resolve("other/BL-1001").resolve(file))
                    .hasSameBinaryContentAs(folder.resolve("one/BL-1001").resolve(file));
        }
    }
}
