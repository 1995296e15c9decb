package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.checkvalues.CheckTable;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("prove")
class ProveCommandTest {

    private static final Path EXAMPLES = Path.of("src", "test", "resources", "worked-families");

    @TempDir
    Path folder;

    private static Ran prove(Object... arguments) {
        return Ran.boltlore(Stream.concat(Stream.of("prove", "--catalogue", EXAMPLES), Stream.of(arguments))
                .toArray());
    }

    @Test
    @DisplayName("ends with 0 when all is proved")
    void ends_with_0_when_all_is_proved() {
        Ran ran = prove("t-shirt");

        assertThat(ran.exit()).as("%s", ran).isEqualTo(Exit.OK);
        assertThat(ran.out())
                .contains("t-shirt: ", " statements about 11 valid orders")
                .contains("Every required position has a part.");
        assertThat(ran.err()).isEmpty();
    }

    @Test
    @DisplayName("ends with 1 at a defect, and says what, how many, when, and how to mend it")
    void ends_with_1_at_a_defect() {
        Ran ran = prove("film-hole");

        assertThat(ran.exit()).as("%s", ran).isEqualTo(Exit.STOPPED);
        assertThat(ran.out())
                .contains("Stop: required part missing: print-film")
                .contains("Affects 4 of 11 valid orders, 36.36 %: exactly those with size=large, print=stw.")
                .contains("Lines: a, b")
                .contains("Fix: Add a line for these orders");
    }

    @Test
    @DisplayName("ends with 0 where all that is to be looked at is accepted, and tells the reasons")
    void ends_with_0_where_all_is_accepted() throws IOException {
        Ran ran = Ran.boltlore("prove");

        assertThat(ran.exit()).as("%s", ran).isEqualTo(Exit.OK);
        assertThat(ran.out())
                .contains("No defect was found; 8 findings accepted.")
                .contains("inlet of another market: type-1 (australia-new-zealand)")
                .contains("Customers whose other vehicles were imported with Type 1");
        JsonNode van = new ObjectMapper()
                .readTree(Ran.boltlore("prove", "pannier-van", "--json").out())
                .get(0);
        assertThat(van.get("defects")).isEmpty();
        assertThat(van.get("accepted")).hasSize(8);
    }

    /** The example whose family accepts these findings. */
    private Path accepting(String... findings) throws IOException {
        String accepted = Stream.of(findings)
                .map(finding -> "{\"finding\": \"" + finding + "\", \"because\": \"So.\"}")
                .collect(Collectors.joining(", ", ", \"accepted\": [", "]}"));
        return edited("film-hole/family.json", text -> text.strip().replaceAll("\\}$", accepted));
    }

    @Test
    @DisplayName("counts what is accepted in vain as no defect")
    void says_what_is_accepted_in_vain() throws IOException {
        Path edited = accepting("line in no order: a", "line in no order: b-and-a-half");

        Ran ran = Ran.boltlore("prove", "film-hole", "--catalogue", edited);

        assertThat(ran.exit()).as("%s", ran).isEqualTo(Exit.STOPPED);
        assertThat(ran.out())
                .contains("1 defect")
                .contains("Stop: required part missing: print-film")
                .contains("line in no order: a: no valid order has it any more.")
                .contains("line in no order: b-and-a-half: this family has nothing of that name.")
                .doesNotContain("found by a trade");
    }

    @Test
    @DisplayName("does not call a trade's finding accepted in vain, which only a kit can have, and says so in a note")
    void knows_the_findings_of_trades() throws IOException {
        Path edited = accepting("outlet above charger: export");

        Ran ran = Ran.boltlore("prove", "film-hole", "--catalogue", edited);

        assertThat(ran.out())
                .contains("Note: accepted in family.json, but found by a trade in kits only")
                .contains("  outlet above charger: export")
                .doesNotContain("in vain");
        assertThat(new ObjectMapper()
                        .readTree(Ran.boltlore("prove", "film-hole", "--catalogue", edited, "--json")
                                .out())
                        .at("/0/acceptedNotJudged/0")
                        .textValue())
                .isEqualTo("outlet above charger: export");
    }

    @Test
    @DisplayName(
            "refuses to accept what stops orders, what is only told, what each order decides on and what is no kind")
    void refuses_what_cannot_be_accepted() throws IOException {
        Path edited = accepting(
                "required part missing: print-film",
                "fuse above cable: traction",
                "joints not known: kit",
                "lines on hold: a",
                "line in no orders: a",
                "line in no order: a");

        for (String command : List.of("prove", "check")) {
            Ran ran = Ran.boltlore(command, "--catalogue", edited);

            assertThat(ran.exit()).as("%s", ran).isEqualTo(Exit.FAULTS);
            assertThat(ran.err().replaceAll("\\s+", " "))
                    .contains("film-hole/family.json")
                    .contains("'required part missing: print-film', a Stop")
                    .contains("'fuse above cable: traction', a Stop")
                    .contains("'joints not known: kit', which is told and asks for nothing")
                    .contains("'lines on hold: a', which each order decides on")
                    .contains("'line in no orders: a', which is no kind of finding")
                    .contains("Did you mean 'line in no order'?")
                    .doesNotContain("/accepted/5/");
        }
    }

    @Test
    @DisplayName("TS-33: refuses a misspelt value before any proof, where a closed world would call the line dead")
    void refuses_a_misspelt_value() throws IOException {
        Path misspelt = edited("film-hole/kit/kit.json", text -> text.replace("\"mib\"", "\"mibb\""));

        Ran ran = Ran.boltlore("prove", "film-hole", "--catalogue", misspelt);

        assertThat(CheckTable.rows("choosing-examples.csv", "TS-33")
                        .findFirst()
                        .orElseThrow()
                        .text("expected"))
                .isEqualTo("error naming the unknown value; not a silent false");
        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("mibb").contains("Did you mean 'mib'?");
    }

    private Path edited(String file, UnaryOperator<String> edit) throws IOException {
        Path copy = folder.resolve("edited");
        try (Stream<Path> all = Files.walk(EXAMPLES)) {
            for (Path from : all.filter(Files::isRegularFile).toList()) {
                Path to = copy.resolve(EXAMPLES.relativize(from).toString());
                Files.createDirectories(to.getParent());
                String text = Files.readString(from);
                Files.writeString(to, from.endsWith(file) ? edit.apply(text) : text);
            }
        }
        return copy;
    }

    @Test
    @DisplayName("ends with 5 when nothing is refuted and the time was too short, and names what is unproved")
    void ends_with_5_when_the_time_was_too_short() {
        Ran ran = prove("t-shirt", "--within", "0ms");

        assertThat(ran.exit()).as("%s", ran).isEqualTo(Exit.UNDECIDED);
        assertThat(ran.out())
                .contains("The valid orders were not counted: the time was up.")
                .contains("Unproved, because the time was up:")
                .contains("required part missing (1): thing");
    }

    @Test
    @DisplayName("names a family that is not there with the nearest that is, and a duration that is none")
    void refuses_what_it_does_not_know() {
        Ran family = prove("t-shrit");
        assertThat(family.exit()).isEqualTo(Exit.FAULTS);
        assertThat(family.err()).contains("found family 't-shrit'").contains("Did you mean 't-shirt'?");

        Ran duration = prove("t-shirt", "--within", "soon");
        assertThat(duration.exit()).isEqualTo(Exit.USAGE);
        assertThat(duration.err()).contains("'soon' is not a duration; write 500ms, 30s or 5m");
    }

    @Test
    @DisplayName("writes witnesses that 'kit' resolves to the finding they show")
    void writes_witnesses_that_kit_resolves() {
        Ran proved = prove("film-hole", "film-overlap", "--examples", folder);
        assertThat(proved.out()).contains("Example order: " + folder.resolve("film-hole-example-001.json"));

        Ran kit = Ran.boltlore("kit", folder, "--catalogue", EXAMPLES, "--out", folder.resolve("out"));

        assertThat(kit.exit()).isEqualTo(Exit.STOPPED);
        assertThat(kit.out()).contains("Required part missing").contains("Two alternatives selected");
    }

    @Test
    @DisplayName("says a family without any valid order by its conflict, once")
    void says_a_family_without_any_valid_order() {
        Ran ran = prove("four-limits");

        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(ran.out())
                .contains("four-limits: ", "0 valid orders")
                .contains("No choice of options keeps all limits.")
                .contains("Limits: one, two")
                .contains("Not decided, because there is no valid order to ask:");
    }

    @Test
    @DisplayName("gives programs the same as people")
    void gives_programs_the_same() throws IOException {
        JsonNode proof =
                new ObjectMapper().readTree(prove("film-hole", "--json").out()).get(0);

        assertThat(proof.get("validOrders").asText()).isEqualTo("11");
        JsonNode hole = proof.get("defects").get(0);
        assertThat(hole.get("kind").asText()).isEqualTo("required part missing");
        assertThat(hole.get("severity").asText()).isEqualTo("stop");
        assertThat(hole.get("affected").asText()).isEqualTo("4");
        assertThat(hole.get("percent").asText()).isEqualTo("36.36");
        assertThat(hole.get("countedAgainBy").asText()).isEqualTo("plain enumeration");
        assertThat(hole.get("noOtherOrder").asBoolean()).isTrue();
    }

    @Test
    @DisplayName("writes a workbook that another reader reads back")
    void writes_a_workbook() throws IOException {
        Path report = folder.resolve("new").resolve("proof.xlsx");

        Ran ran = prove("film-hole", "--report", report);

        assertThat(ran.out()).contains(report + ": the report");
        try (ReadableWorkbook book = new ReadableWorkbook(Files.newInputStream(report));
                Stream<Row> rows = book.findSheet("Defects").orElseThrow().openStream()) {
            List<String> all = rows.flatMap(Row::stream)
                    .filter(cell -> cell != null)
                    .map(cell -> cell.getText())
                    .toList();
            assertThat(all).contains("required part missing", "print-film", "4", "size=large, print=stw");
        }
    }

    @Test
    @DisplayName("says when a place cannot be written, and still prints the proof")
    void says_when_a_place_cannot_be_written() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "in the way");

        Ran ran = prove("film-hole", "--examples", file);

        assertThat(ran.exit()).isEqualTo(Exit.NOT_WRITTEN);
        assertThat(ran.out()).contains("required part missing: print-film");
        assertThat(ran.err()).contains("a file or the root of the disk");
    }

    @Test
    @DisplayName("writes the statements for other solvers, with the script that asks them")
    void writes_the_statements_for_other_solvers() {
        Ran ran = prove("t-shirt", "--evidence", folder);

        assertThat(ran.out()).contains("statements to check again, with 'sh check.sh SOLVER'");
        assertThat(folder.resolve("t-shirt"))
                .isDirectoryContaining("glob:**base.cnf")
                .isDirectoryContaining("glob:**statements.tsv")
                .isDirectoryContaining("glob:**check.sh");
    }

    @Test
    @DisplayName("names variants to build on the bench with their cost, and writes them as orders")
    void names_variants_to_build_on_the_bench() {
        Ran ran = prove("t-shirt", "--trial-builds", "pairs", "--examples", folder);

        assertThat(ran.exit()).as("%s", ran).isEqualTo(Exit.OK);
        assertThat(ran.out())
                .contains("10 trial builds have all 19 pairs of values that any valid order has")
                .contains("t-shirt-trial-001: EUR 1.00: ")
                .contains("Direct cost of these kits together: EUR 10.00")
                .contains("7 combinations no valid order has");
        assertThat(folder).isDirectoryContaining("glob:**t-shirt-trial-010.json");
        Ran kits = Ran.boltlore("kit", folder, "--catalogue", EXAMPLES, "--out", folder.resolve("out"));
        assertThat(kits.exit()).as("%s", kits).isEqualTo(Exit.OK);
    }

    @Test
    @DisplayName("says which kits an edit changes")
    void says_which_kits_an_edit_changes() throws IOException {
        Path edited = edited(
                "film-whole/kit/kit.json",
                text -> text.replace("\"part\": \"EX-B\", \"quantity\": 1", "\"part\": \"EX-B\", \"quantity\": 3"));

        Ran ran = Ran.boltlore("prove", "film-whole", "--catalogue", edited, "--against", EXAMPLES);

        assertThat(ran.exit()).as("%s", ran).isEqualTo(Exit.OK);
        assertThat(ran.out())
                .contains("This edit changes 4 of 11 variants, all with print=stw, size=medium.")
                .contains("EX-B Example part EX-B: +2 in 4")
                .contains("EX-B Example part EX-B: 1 before, 3 after");
        assertThat(prove("film-whole", "--against", EXAMPLES).out())
                .contains("This edit changes no kit of the 11 variants that are valid in both.");
        assertThat(prove("film-whole", "--against", EXAMPLES, "--trial-builds", "pairs")
                        .exit())
                .isEqualTo(Exit.USAGE);
    }
}
