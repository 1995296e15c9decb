package boltlore.bring;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.faults.Outcome;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Lists of an invented workshop, written by LibreOffice or byte by byte, each with what it means written by hand. */
@DisplayName("A messy list")
class SheetsTest {

    private static final Path FOLDER = Path.of("src/test/resources/boltlore/bring");

    static Stream<String> truths() throws IOException {
        return Files.readAllLines(FOLDER.resolve("sheets.txt")).stream().filter(line -> !line.startsWith("#"));
    }

    @ParameterizedTest
    @MethodSource("truths")
    void is_read_as_it_was_meant_or_asked_about(String line) throws IOException {
        Judged.Truth truth = Judged.Truth.of(line);
        long open = truth.rows().values().stream().filter("?"::equals).count();

        Judged judged = Judged.of(truth, read(truth.file()));

        assertThat(judged.wrong()).isEmpty();
        assertThat(judged.asked()).isEqualTo((int) open);
        assertThat(judged.right()).isEqualTo(truth.rows().size() - (int) open);
    }

    private static Brought read(String file) throws IOException {
        return read(file, null);
    }

    private static Brought read(String file, @Nullable Mapping mapping) throws IOException {
        byte[] bytes = Files.readAllBytes(FOLDER.resolve("sheets").resolve(file));
        Outcome<Brought> read = Brought.read(file, bytes, mapping, "kit", Known.NOTHING);
        assertThat(read.faults()).isEmpty();
        return ((Outcome.Sound<Brought>) read).value();
    }

    /** With every open question answered so, what is likely first. */
    private static Brought answered(String file, Map<String, String> answers) throws IOException {
        Brought brought = read(file);
        for (int round = 0; round < 3; round++) {
            for (Mapping.Open open : brought.mapping().questions()) {
                String answer = answers.getOrDefault(open.at(), "yes");
                brought = read(file, brought.mapping().answered(open, answer));
            }
        }
        assertThat(brought.mapping().open()).isEmpty();
        return brought;
    }

    @Nested
    @DisplayName("whose columns hold marks")
    class Marks {

        private final Map<String, String> answers = Map.of("Kit!B14", "leave out", "Kit!F3", "any");

        @Test
        void asks_once_whether_a_row_without_a_mark_in_one_group_is_fitted() throws IOException {
            assertThat(read("orchard-marks.xlsx").mapping().open())
                    .filteredOn(open -> open.contains("no mark under 'Drive side'"))
                    .hasSize(1);
        }

        @Test
        void becomes_options_with_lines_for_their_values() throws IOException {
            Brought brought = answered("orchard-marks.xlsx", answers);

            String kit = brought.files().get("families/kit/kit/all.json");
            assertThat(flat(kit))
                    .contains("\"part\": \"OC-100\", \"quantity\": \"1\", \"when\": {\"body\": \"early\"}")
                    .contains("\"part\": \"OC-110\", \"quantity\": \"2\", \"when\": {\"drive-side\": \"left\"}")
                    .contains("\"part\": \"OC-200\", \"quantity\": \"8\"}")
                    .contains(
                            "\"part\": \"OC-202\", \"quantity\": \"4\", \"when\": {\"body\": \"late\", \"drive-side\": \"left\"}")
                    .doesNotContain("OC-203");
            assertThat(flat(brought.files().get("families/kit/family.json")))
                    .contains("{\"value\": \"early\", \"says\": \"early\"}, {\"value\": \"late\", \"says\": \"late\"}");
        }

        @Test
        void leaves_such_a_row_out_where_that_is_the_answer() throws IOException {
            Brought brought = answered("orchard-marks.xlsx", Map.of("Kit!B14", "leave out", "Kit!F3", "none"));

            assertThat(brought.files().get("families/kit/kit/all.json")).doesNotContain("OC-200");
        }
    }

    @Nested
    @DisplayName("whose columns hold a quantity for each drawing")
    class Variants {

        @Test
        void becomes_a_line_for_each_quantity() throws IOException {
            Brought brought = answered(
                    "drawings-as-headings.xlsx",
                    Map.of("missing/cost", "1", "missing/massKg", "0.1", "missing/currency", "EUR"));

            assertThat(flat(brought.files().get("families/kit/kit/all.json")))
                    .contains("\"part\": \"LB-01\", \"quantity\": \"1\"}")
                    .contains(
                            "\"part\": \"LB-03\", \"quantity\": \"2\", \"when\": {\"drawings\": [\"kit-a-1002-dwg\", \"kit-b-2001-dwg\"]}")
                    .contains(
                            "\"part\": \"LB-05\", \"quantity\": \"2.5\", \"when\": {\"drawings\": [\"kit-a-1001-dwg\", \"kit-a-1002-dwg\"]}")
                    .contains("\"part\": \"LB-05\", \"quantity\": \"4\", \"when\": {\"drawings\": \"kit-b-2001-dwg\"}");
            assertThat(flat(brought.files().get("parts/kit.json")))
                    .contains("\"name\": \"Loom 12 V\", \"unit\": \"m\"");
        }

        @Test
        void tells_a_total_that_is_not_the_sum() throws IOException {
            assertThat(read("drawings-as-headings.xlsx").notes())
                    .extracting(Doubt::says)
                    .contains("the total says 4, the rows above add up to 6.5");
        }
    }

    @Nested
    @DisplayName("with levels")
    class WithLevels {

        private final Map<String, String> missing =
                Map.of("missing/cost", "1", "missing/massKg", "0.1", "missing/currency", "EUR");

        @Test
        void has_deeper_rows_inside_those_above_where_that_is_the_answer() throws IOException {
            Brought brought = answered("levels-bars.csv", missing);

            assertThat(flat(brought.files().get("parts/kit.json")))
                    .contains(
                            "\"contains\": [{\"part\": \"PB-11\", \"quantity\": \"1\"}, {\"part\": \"PB-12\", \"quantity\": \"4\"}]");
            assertThat(brought.files().get("families/kit/kit/all.json"))
                    .contains("PB-1\"")
                    .doesNotContain("PB-11");
        }

        @Test
        void has_them_beside_one_another_where_that_is() throws IOException {
            Map<String, String> beside = new HashMap<>(missing);
            beside.put("levels-bars!A1", "beside");

            Brought brought = answered("levels-bars.csv", beside);

            assertThat(brought.files().get("parts/kit.json")).doesNotContain("contains");
            assertThat(brought.files().get("families/kit/kit/all.json")).contains("PB-11");
        }
    }

    @Nested
    @DisplayName("in an encoding of its own")
    class Encoded {

        @Test
        void has_the_letters_that_were_typed() throws IOException {
            assertThat(names("luefter-850.csv")).containsExactly("Lüfterkäfig", "Gehäusefuß", "Schlauchtülle für Öl");
            assertThat(names("hecktraeger-1252.csv")).contains("Stütze „Mitte“", "Klemme für Rohr Ø40");
            assertThat(names("utf16be.csv")).contains("Seal 3/8\" NPT");
        }

        private List<String> names(String file) throws IOException {
            return read(file).tables().get(0).entries().stream()
                    .map(Entry::name)
                    .toList();
        }
    }

    @Nested
    @DisplayName("that counts packs and weeks")
    class Packs {

        @Test
        void asks_whether_a_cost_is_for_one_or_for_a_pack() throws IOException {
            assertThat(read("packs-and-weeks.csv").mapping().open())
                    .singleElement()
                    .isEqualTo("packs-and-weeks!E2: is the cost that of one piece (piece), or of a pack (pack)?");
        }

        @Test
        void divides_the_cost_of_a_pack_where_that_is_the_answer() throws IOException {
            String parts = flat(answered("packs-and-weeks.csv", Map.of("packs-and-weeks!E2", "pack"))
                    .files()
                    .get("parts/kit.json"));

            assertThat(parts).contains("\"cost\": \"0.1\"").contains("\"cost\": \"12\"");
        }

        @Test
        void takes_the_cost_as_it_is_where_that_is() throws IOException {
            String parts =
                    flat(answered("packs-and-weeks.csv", Map.of()).files().get("parts/kit.json"));

            assertThat(parts).contains("\"cost\": \"5.00\"");
        }

        @Test
        void makes_days_of_weeks() throws IOException {
            String parts =
                    flat(answered("packs-and-weeks.csv", Map.of()).files().get("parts/kit.json"));

            assertThat(parts).contains("\"leadDays\": 14").contains("\"leadDays\": 21");
        }
    }

    @Test
    void fits_what_is_marked_as_common_whichever_is_chosen() throws IOException {
        Brought brought = answered(
                "common-column.csv", Map.of("missing/cost", "1", "missing/massKg", "1", "missing/currency", "EUR"));

        assertThat(flat(brought.files().get("families/kit/kit/all.json")))
                .contains("\"quantity\": \"1\", \"when\": {\"variant\": \"lhd\"}")
                .contains("\"quantity\": \"4\"}");
        assertThat(brought.files().get("families/kit/family.json")).doesNotContain("ommon");
    }

    @Test
    void asks_again_where_an_answer_means_nothing() throws IOException {
        Brought brought = read("board-not-fitted.csv");
        Mapping.Open open = brought.mapping().questions().stream()
                .filter(each ->
                        each.at().equals("board-not-fitted!F4") || each.at().equals("board-not-fitted!E4"))
                .findFirst()
                .orElseThrow();

        assertThat(read("board-not-fitted.csv", brought.mapping().answered(open, "leave out"))
                        .tables()
                        .get(0)
                        .entries())
                .hasSize(2);
        Mapping.Open quantity = read("hecktraeger-1252.csv").mapping().questions().stream()
                .filter(each -> each.at().equals("hecktraeger-1252!E8"))
                .findFirst()
                .orElseThrow();
        assertThat(read(
                                "hecktraeger-1252.csv",
                                read("hecktraeger-1252.csv").mapping().answered(quantity, "perhaps"))
                        .mapping()
                        .open())
                .anySatisfy(asked -> assertThat(asked).contains("'perhaps' is neither a quantity"));
    }

    @Test
    void says_grams_where_its_heading_does() throws IOException {
        Brought brought = answered("hecktraeger-1252.csv", Map.of("hecktraeger-1252!E8", "leave out"));

        assertThat(flat(brought.files().get("parts/kit.json"))).contains("\"cost\": \"21.50\", \"massKg\": \"1.25\"");
    }

    @Test
    void is_read_the_same_from_the_mapping_that_it_gave() throws IOException {
        Brought first = read("orchard-marks.xlsx");
        Outcome<Mapping> kept = Brought.mapping("m", first.mappingText("schema").getBytes(StandardCharsets.UTF_8));

        assertThat(read("orchard-marks.xlsx", ((Outcome.Sound<Mapping>) kept).value())
                        .mappingText("schema"))
                .isEqualTo(first.mappingText("schema"));
    }

    private static String flat(String json) {
        return json.replaceAll("\\s+", " ")
                .replace("{ ", "{")
                .replace(" }", "}")
                .replace("[ ", "[")
                .replace(" ]", "]");
    }

    private static Brought numbered(@Nullable Mapping mapping) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook();
                ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            XSSFSheet sheet = book.createSheet("Parts");
            List<String> headings = List.of("Part no", "Description", "Qty");
            Row head = sheet.createRow(0);
            headings.forEach(
                    heading -> head.createCell(headings.indexOf(heading)).setCellValue(heading));
            List<String> names = List.of("Bracket", "Spacer", "Ring");
            List<Double> numbers = List.of(46054.0, 417.0, 41800.0);
            List<String> formats = List.of("dd\\.mm\\.", "0000", "0000");
            for (int at = 0; at < names.size(); at++) {
                Row row = sheet.createRow(at + 1);
                CellStyle style = book.createCellStyle();
                style.setDataFormat(book.createDataFormat().getFormat(formats.get(at)));
                row.createCell(0).setCellValue(numbers.get(at));
                row.getCell(0).setCellStyle(style);
                row.createCell(1).setCellValue(names.get(at));
                row.createCell(2).setCellValue(2);
            }
            book.write(bytes);
            Outcome<Brought> read = Brought.read("numbers.xlsx", bytes.toByteArray(), mapping, "kit", Known.NOTHING);
            return ((Outcome.Sound<Brought>) read).value();
        }
    }

    @Test
    void a_number_of_a_part_keeps_the_noughts_that_its_cell_shows() throws IOException {
        assertThat(numbered(null).files().get("parts/kit.json"))
                .contains("\"0417\"", "\"41800\"")
                .doesNotContain("\"417\"");
    }

    @Test
    void a_date_where_a_number_of_a_part_should_be_is_asked_about_and_the_answer_is_the_number() throws IOException {
        Brought first = numbered(null);

        assertThat(first.mapping().open())
                .anySatisfy(asked -> assertThat(asked).contains("Parts!A2", "'2026-02-01' is a date"));
        Mapping mapping = first.mapping();
        List<Mapping.Asked> answers = mapping.answers().stream()
                .map(asked -> asked.at().equals("Parts!A2")
                        ? new Mapping.Asked(asked.at(), asked.asks(), asked.likely(), "1-2")
                        : asked)
                .toList();
        Mapping said = new Mapping(mapping.family(), mapping.encoding(), mapping.missing(), mapping.tables(), answers);
        Brought second = numbered(said);
        assertThat(second.mapping().open()).noneMatch(asked -> asked.contains("is a date"));
        assertThat(second.files().get("parts/kit.json")).contains("\"1-2\"").doesNotContain("2026-02-01");
    }
}
