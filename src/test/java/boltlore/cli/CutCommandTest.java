package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("cut")
class CutCommandTest {

    private static final Path ORDERS = Path.of("catalog", "orders");
    private static final Path ONE = ORDERS.resolve("bl-1001.json");
    private static final Path OTHER = ORDERS.resolve("bl-1003.json");
    private static final Path RACK = Path.of("catalog", "remnants", "rack.json");

    @TempDir
    Path folder;

    private Ran cut(Object... arguments) {
        Object[] all = Stream.concat(Stream.of("cut", "--out", folder.resolve("out")), Stream.of(arguments))
                .toArray();
        return Ran.boltlore(all);
    }

    private static JsonNode tables(JsonNode order) {
        return order.get("reports").get(0).get("tables");
    }

    private static JsonNode json(Ran ran) throws IOException {
        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        return new ObjectMapper().readTree(ran.out());
    }

    @Test
    @DisplayName("writes a workbook, tables as CSV and JSON, and tells the plan")
    void writes_the_list() {
        Ran ran = cut(ONE, OTHER);

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        assertThat(ran.out()).contains("All materials").contains("1 sheet written to");
        assertThat(folder.resolve("out"))
                .isDirectoryContaining("glob:**/cutting-list.xlsx")
                .isDirectoryContaining("glob:**/csv")
                .isDirectoryContaining("glob:**/json");
    }

    @Test
    @DisplayName("as JSON says of each material what it costs, what it costs at least, and that this is proved")
    void as_json() throws IOException {
        JsonNode order = json(cut(ONE, "--json")).get("orders").get(0);

        assertThat(order.get("order").asText()).isEqualTo("BL-1001");
        JsonNode materials = tables(order).get("materials");
        assertThat(materials).isNotEmpty().allSatisfy(material -> {
            assertThat(material.get("cost").asText())
                    .isEqualTo(material.get("lower-bound").asText());
            assertThat(material.get("gap").asInt()).isZero();
        });
    }

    @Test
    @DisplayName("uses remnants at hand, and what it says is left can be read as the remnants at hand of the next time")
    void remnants_come_round() throws IOException {
        Path left = folder.resolve("left.json");
        json(cut(ONE, "--remnants", RACK, "--left", left, "--json"));

        JsonNode second = json(cut(OTHER, "--remnants", left, "--json"));
        List<String> used = tables(second.get("orders").get(0)).get("taken").findValuesAsText("remnant");
        assertThat(used).isNotEmpty().anyMatch(name -> name.startsWith("BL-1001-"));
    }

    @Test
    @DisplayName(
            "says of each remnant at hand whether it was taken or stays, and writes those that lie on the rack then")
    void remnants_at_hand() throws IOException {
        Path left = folder.resolve("left.json");
        JsonNode ran = json(cut(ONE, "--remnants", RACK, "--left", left, "--json"));
        JsonNode tables = tables(ran.get("orders").get(0));
        List<String> atHand = names(new ObjectMapper().readTree(RACK.toFile()).get("remnants"));
        List<String> taken = names(tables.get("taken"));
        List<String> unused = names(tables.path("unused"));
        List<String> rack = names(new ObjectMapper().readTree(left.toFile()).get("remnants"));

        assertThat(taken).isNotEmpty();
        assertThat(Stream.concat(taken.stream(), unused.stream())).containsExactlyInAnyOrderElementsOf(atHand);
        assertThat(Stream.concat(unused.stream(), names(tables.get("kept")).stream()))
                .containsExactlyInAnyOrderElementsOf(rack);
        assertThat(ran.get("written").toString()).contains("left.json").contains("cutting-list.xlsx");
    }

    private static List<String> names(JsonNode remnants) {
        return remnants.findValuesAsText("remnant");
    }

    private static List<String> marks(Path rack) throws IOException {
        return names(new ObjectMapper().readTree(rack.toFile()));
    }

    @Test
    @DisplayName("gives no remnant a mark that another one on the rack has, or one that was cut up had")
    void marks_are_given_once() throws IOException {
        Path rack = Files.writeString(
                folder.resolve("rack.json"),
                "{\"remnants\": [{\"remnant\": \"BL-1001-3\", \"material\": \"s235-tube-40x40x3\", \"lengthMm\": \"150\"},"
                        + " {\"remnant\": \"BL-1001-1\", \"material\": \"s235-tube-40x40x3\", \"lengthMm\": \"2400\"}]}");
        Path left = folder.resolve("left.json");
        json(cut(ONE, "--remnants", rack, "--left", left, "--json"));
        List<String> first = marks(left);
        assertThat(first).doesNotHaveDuplicates().contains("BL-1001-1", "BL-1001-3");

        Path again = folder.resolve("again.json");
        json(cut(ONE, "--remnants", left, "--left", again, "--json"));

        assertThat(marks(again)).doesNotHaveDuplicates().containsAll(first).hasSizeGreaterThan(first.size());
    }

    @Test
    @DisplayName("carries heat numbers that somebody wrote into the rack over into the same file")
    void heat_numbers_are_carried() throws IOException {
        Path rack = folder.resolve("rack.json");
        json(cut(ONE, "--left", rack, "--json"));
        String heated = Files.readString(rack).replaceFirst("(\"lengthMm\": \"[0-9.]+\")", "$1, \"heat\": \"OS-4711\"");
        Files.writeString(rack, heated);

        Ran ran = cut(OTHER, "--remnants", rack, "--left", rack);

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        assertThat(rack).content().contains("OS-4711").isNotEqualTo(heated);
    }

    @Test
    @DisplayName("does not replace a rack that it has not written, even where it was read from there")
    void a_rack_written_by_hand_stays() throws IOException {
        Path rack = Files.copy(RACK, folder.resolve("rack.json"));
        Ran ran = cut(ONE, "--remnants", rack, "--left", rack);
        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.NOT_WRITTEN);
        assertThat(ran.err()).contains("name another place");
        assertThat(rack).hasSameTextualContentAs(RACK);
    }

    @Test
    @DisplayName("finds what is not to be cut until somebody decides, of the order that it belongs to")
    void on_hold() throws IOException {
        JsonNode together = json(cut(OTHER, ORDERS.resolve("bl-1002.json"), "--json"))
                .get("orders")
                .get(0);
        JsonNode decided = json(cut(OTHER, "--json")).get("orders").get(0);

        assertThat(together.has("order")).isFalse();
        assertThat(together.get("orders")).extracting(JsonNode::asText).containsExactly("BL-1003", "BL-1002");
        assertThat(together.get("findings")).isNotEmpty().allSatisfy(finding -> {
            assertThat(finding.get("kind").asText()).isEqualTo("part not to be cut");
            assertThat(finding.get("severity").asText()).isEqualTo("check");
            assertThat(finding.get("orders")).extracting(JsonNode::asText).containsExactly("BL-1002");
        });
        assertThat(tables(together).get("on-hold")).hasSameSizeAs(together.get("findings"));
        assertThat(decided.get("findings")).isEmpty();
    }

    @Test
    @DisplayName("tells an order that something stops, and cuts the others")
    void stopped_orders_stay_out() {
        Ran ran = cut(ONE, ORDERS.resolve("bl-1006.json"));

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.STOPPED);
        assertThat(ran.out()).contains("BL-1006").contains("1 sheet written to");
        assertThat(folder.resolve("out/csv/cutting-list-findings.csv"))
                .content()
                .contains("order stopped")
                .contains("Order BL-1006, due ");
    }

    @Test
    @DisplayName("as JSON says of an order that something stops what stops it")
    void stopped_orders_as_json() throws IOException {
        Ran ran = cut(ONE, ORDERS.resolve("bl-1006.json"), "--json");
        JsonNode orders = new ObjectMapper().readTree(ran.out()).get("orders");
        assertThat(orders).hasSize(2);
        assertThat(orders.get(0).get("findings").findValuesAsText("kind")).contains("order stopped");
        assertThat(orders.get(1).get("order").asText()).isEqualTo("BL-1006");
        assertThat(orders.get(1).get("stops").asBoolean()).isTrue();
        assertThat(orders.get(1).get("findings")).isNotEmpty();
    }

    @Test
    @DisplayName("writes nothing where every order is stopped")
    void nothing_to_cut() {
        Ran ran = cut(ORDERS.resolve("bl-1006.json"));

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.STOPPED);
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    @DisplayName("leaves what was there where it cannot write")
    void not_written() throws IOException {
        Files.writeString(folder.resolve("file"), "");
        Ran ran = Ran.boltlore("cut", ONE, "--out", folder.resolve("file").resolve("out"));

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.NOT_WRITTEN);
    }

    @Nested
    @DisplayName("refuses in a sentence")
    class Refuses {

        private void refused(Ran ran, String... words) {
            assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.FAULTS);
            assertThat(ran.err()).contains(words).doesNotContain("\tat ").doesNotContain("Exception");
            assertThat(folder.resolve("out")).doesNotExist();
        }

        private Path rack(String remnants) throws IOException {
            return Files.writeString(folder.resolve("rack.json"), "{\"remnants\": [" + remnants + "]}");
        }

        @Test
        @DisplayName("an order that is given twice")
        void twice() {
            refused(cut(ONE, ONE), "BL-1001", "Give each order once");
        }

        @Test
        @DisplayName("remnants that are not there")
        void no_rack() {
            refused(cut(ONE, "--remnants", folder.resolve("nowhere.json")), "nowhere.json", "nothing of that name");
        }

        @Test
        @DisplayName("what is wrong with an order and with the remnants, together")
        void order_and_rack() {
            refused(
                    cut(folder.resolve("no-order.json"), "--remnants", folder.resolve("no-rack.json")),
                    "no-order.json",
                    "no-rack.json");
        }

        @Test
        @DisplayName("all that is wrong with remnants, together")
        void wrong_remnants() throws IOException {
            Path rack = rack("""
                    {"remnant": "A", "material": "s235-tube-40x40x4", "lengthMm": "900"},
                    {"remnant": "B", "material": "s235-tube-40x40x3", "lengthMm": "-5"},
                    {"remnant": "B", "material": "s235-sheet-3", "lengthMm": "900"},
                    {"remnant": "B", "material": "s235-round-20", "lengthMm": "900", "colour": "red"},
                    {"remnant": "C", "material": "s235-round-20", "lengthMm": "900"},
                    {"remnant": "C", "material": "s235-round-20", "lengthMm": "900000"},
                    {"remnant": "C", "material": "s235-round-20", "lengthMm": "900"}""");

            refused(
                    cut(ONE, "--remnants", rack),
                    "Did you mean 's235-tube-40x40x3'?",
                    "'-5'",
                    "a material that is bought in bars",
                    "the unknown key 'colour'",
                    "'900000'",
                    "'C' a second time");
        }

        @Test
        @DisplayName("a part longer than any bar, with the longest bar")
        void too_long() throws IOException {
            refused(
                    cutWith("parts/pannier-drive.json", "\"lengthMm\": 610,", "\"lengthMm\": 6100,"),
                    "6100 mm",
                    "6000 mm");
        }

        @Test
        @DisplayName("a slanted piece that a bar would only give if it were cut square")
        void too_long_for_its_slants() throws IOException {
            refused(
                    cutWith("parts/pannier-drive.json", "\"lengthMm\": 980,", "\"lengthMm\": 5930,"),
                    "too long",
                    "6000 mm");
        }

        @Test
        @DisplayName("a kerf larger than the piece")
        void kerf() throws IOException {
            refused(cutWith("materials.json", "\"kerfMm\": \"2.5\"", "\"kerfMm\": \"30\""), "kerf of 30 mm", "28 mm");
        }

        @Test
        @DisplayName("a negative kerf")
        void negative() throws IOException {
            refused(cutWith("materials.json", "\"kerfMm\": \"2.5\"", "\"kerfMm\": \"-2.5\""), "'-2.5'", "kerfMm");
        }

        @Test
        @DisplayName("a part of a material without bars")
        void no_bars() throws IOException {
            refused(
                    cutWith(
                            "materials.json",
                            "\"stock\": \\{\"saw\": \"cold-saw\", \"acrossMm\": 40,[^\\]]*\\]\\}",
                            "\"thicknessMm\": 40"),
                    "PV-CR-BOSS",
                    "no bars are known",
                    "Add 'stock'");
        }

        /** Cuts with a copy of the demo catalogue that is changed everywhere in one file. */
        private Ran cutWith(String file, String pattern, String replacement) throws IOException {
            Path copy = folder.resolve("catalog");
            copy(Path.of("catalog"), copy);
            Path changed = copy.resolve(file);
            String before = Files.readString(changed);
            String after = before.replaceAll(pattern, replacement);
            assertThat(after).isNotEqualTo(before);
            Files.writeString(changed, after);
            return cut(ORDERS.resolve("bl-1005.json"), ONE, "--catalogue", copy);
        }
    }

    private static void copy(Path from, Path to) {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
