package boltlore.trades.coating.written;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.trades.coating.CoatPlan;
import boltlore.trades.coating.CoatPlanner;
import boltlore.trades.coating.FilmReading;
import boltlore.trades.coating.SampleOrders;
import boltlore.trades.coating.SampleShop;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Batch 1 holds three pieces of BR-1, order BL-1; it is run 1. */
class ShopRecordTest {

    private static final CoatPlan PLAN = CoatPlanner.plan(
            List.of(SampleOrders.order("BL-1")
                    .with(3, SampleShop.part("BR-1", SampleShop.coat("0.5")), SampleShop.OWN_BLACK)
                    .bill()),
            SampleOrders.catalogue("PB-BLACK", SampleShop.OWN_BLACK));

    private static final String HEAD = "Limits,Part,Piece,Reading 1 (µm),Reading 2,Reading 3,Reading 4,Reading 5\n";

    @TempDir
    private Path folder;

    private Outcome<ShopRecord> read(String name, String text) {
        try {
            return ShopRecord.read(List.of(Files.writeString(folder.resolve(name), text)), PLAN);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private ShopRecord sound(String name, String text) {
        Outcome<ShopRecord> outcome = read(name, text);
        assertThat(outcome.faults()).isEmpty();
        return ((Outcome.Sound<ShopRecord>) outcome).value();
    }

    private List<String> found(String name, String text) {
        return read(name, text).faults().stream().map(Fault::found).toList();
    }

    @Test
    void a_filled_in_table_of_the_sheet() {
        ShopRecord record = sound("film.csv", HEAD + "F1,BR-1,BL-1 2,70,71.5,69,74,70\n");
        assertThat(record.film().get(0).um()).hasSize(5);
        assertThat(record.film().get(0).piece()).isEqualTo("BL-1 2");
    }

    @Test
    void rows_without_readings_only_say_that_the_piece_is_there() {
        String text = HEAD + "F1,BR-1,BL-1 1,,,,,\nF1,BR-1,BL-1 2,70,71.5,69,74,70\n";
        assertThat(sound("film.csv", text).film())
                .extracting(FilmReading::isFilled)
                .containsExactly(false, true);
    }

    @Test
    void a_table_in_which_nothing_is_filled_in_is_told() {
        assertThat(found("film.csv", HEAD + "F1,BR-1,BL-1 1,,,,,\n")).containsExactly("nothing filled in");
    }

    @Test
    void as_a_spreadsheet_writes_it_where_the_comma_is_decimal() {
        String text = "\uFEFF" + HEAD.replace(',', ';') + "F1;BR-1;BL-1 1;70;71,5;69;74;70\n";
        assertThat(sound("film.csv", text).film().get(0).um().get(1)).isEqualByComparingTo("71.5");
    }

    @Test
    void quoted_cells_may_hold_separators_quotes_and_line_breaks() {
        String text = "Name," + HEAD + "\"a \"\"b\"\",\nc\",F1,BR-1,BL-1 1,70,71,69,74,70\n";
        assertThat(sound("film.csv", text).film()).hasSize(1);
    }

    @Test
    void totals_and_groups_of_a_powder_table_are_passed_over() {
        String text = "Row,Group,Run,Powder,Issued (kg)\ngroup,Round 1,,,\nrow,Round 1,1,P,3.4\ntotal,All,,,3.4\n";
        assertThat(sound("powder.csv", text).issued()).hasSize(1);
    }

    @Test
    void the_same_as_json() {
        ShopRecord record = sound(
                "record.json",
                "{\"readings\": [{\"limits\": \"F1\", \"part\": \"BR-1\", \"piece\": \"BL-1 1\", \"um\": [70, \"71.5\", 69, 74, 70]}],"
                        + " \"issued\": [{\"run\": 1, \"kg\": \"3.4\"}]}");
        assertThat(record.film()).hasSize(1);
        assertThat(record.issued().get(0).kg()).isEqualByComparingTo("3.4");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "F1,BR-1,BL-1 1,ok,70,70,70,70 | reading 1 | 'ok' | a film in µm",
                "F1,BR-1,BL-1 1,70,-70,70,70,70 | reading 2 | '-70' | a film in µm",
                "F1,BR-1,BL-1 1,70,70,0,70,70 | reading 3 | '0' | a film in µm",
                "F1,BR-1,BL-1 1,70,70,70,1001,70 | reading 4 | '1001' | at most 1000",
                "F1,BR-1,BL-1 1,70,70,70,70,1e2 | reading 5 | '1e2' | a film in µm",
                "F1,BR-1,BL-1 1,70,70,70,, | ~~ | 3 readings | 5 on each piece",
                ",BR-1,BL-1 1,70,70,70,70,70 | limits | nothing | what 'boltlore coat' wrote there",
                "F1,BR-1,,70,70,70,70,70 | piece | nothing | what 'boltlore coat' wrote there",
                "F1,BR-1,BL-1 1,68,5,70,70,70,70 | ~~ | more cells than headings | a cell under each heading",
                "F1,BR-1,BL-1 1,\"70,500\",70,70,70,70 | reading 1 | '70,500' | with a point before its decimals"
            })
    void bad_rows(String row, String place, String found, String expected) {
        List<Fault> faults = read("film.csv", HEAD + row + "\n").faults();
        assertThat(faults).hasSize(1);
        assertThat(faults.get(0).line()).isEqualTo(2);
        assertThat(faults.get(0).place()).isEqualTo(place);
        assertThat(faults.get(0).found()).isEqualTo(found);
        assertThat(faults.get(0).expected()).contains(expected);
    }

    @Test
    @DisplayName("The greatest film that is believed is 1000 µm")
    void near_miss() {
        assertThat(sound("film.csv", HEAD + "F1,BR-1,BL-1 1,1000,70,70,70,70\n").film())
                .hasSize(1);
    }

    @Test
    void a_piece_read_twice() {
        String row = "F1,BR-1,BL-1 2,70,71,69,74,70\n";
        assertThat(found("film.csv", HEAD + row + row)).containsExactly("piece 'BL-1 2' of BR-1 a second time");
    }

    @Test
    void a_piece_coated_again_is_read_twice() {
        String head = HEAD.replace("Reading 1 (µm)", "Coating,Reading 1 (µm)");
        String rows = "F1,BR-1,BL-1 2,1,70,71,69,74,70\nF1,BR-1,BL-1 2,2,70,71,69,74,70\n";
        assertThat(sound("film.csv", head + rows).film())
                .extracting(FilmReading::coating)
                .containsExactly(1, 2);
    }

    @Test
    void quoted_a_decimal_comma_is_taken_in_a_file_of_commas() {
        String text = HEAD + "F1,BR-1,BL-1 2,\"68,5\",71,69,74,70\n";
        assertThat(sound("film.csv", text).film().get(0).um().get(0)).isEqualByComparingTo("68.5");
    }

    @ParameterizedTest(name = "good {0}, look {1}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "yes | yes | ''",
                "'' | ✓ | ''",
                "no | '' | not accepted",
                "nein | ok | not accepted",
                "yes | no | visual not OK",
                "'' | runs at the edge | runs at the edge"
            })
    void what_was_seen(String good, String look, String flaw) {
        String head = HEAD.replace("\n", ",Accepted,Visual OK\n");
        String row = "F1,BR-1,BL-1 2,70,71,69,74,70," + good + "," + look + "\n";
        assertThat(sound("film.csv", head + row).film().get(0).flaw()).isEqualTo(flaw);
    }

    @Test
    void rejected_by_eye_a_piece_needs_no_reading() {
        String head = HEAD.replace("\n", ",good,look\n");
        assertThat(sound("film.csv", head + "F1,BR-1,BL-1 2,,,,,,no,dust\nF1,BR-1,BL-1 3,,,,,,yes,\n")
                        .film())
                .extracting(FilmReading::flaw)
                .containsExactly("dust", "");
    }

    @Test
    void a_run_that_is_not_there_and_one_entered_twice() {
        assertThat(found("powder.csv", "Run,Issued (kg)\n2,1\n1,1\n1,1\n"))
                .containsExactly("run 2", "run 1 a second time");
    }

    @Test
    void another_table() {
        assertThat(found("film.csv", "a,b\n1,2\n")).containsExactly("the headings a, b");
    }

    @Test
    void nothing_in_the_file() {
        assertThat(found("film.csv", "\n")).containsExactly("an empty file");
    }

    @Test
    void blanks_around_a_reading_are_no_part_of_it_even_those_that_do_not_break() {
        String row = HEAD + "F1,BR-1,BL-1 2,\u00A070\u00A0,71.5\u202F, 69 ,74,70\n";

        assertThat(sound("film.csv", row).film().get(0).um().get(0)).isEqualByComparingTo("70");
        assertThat(found("split.csv", row.replace("\u00A070\u00A0", "7\u00A00")))
                .containsExactly("'7\u00A00'");
    }

    @Test
    void a_workbook_is_told_from_a_table() {
        assertThat(found("film.xlsx", "PK\u0003\u0004")).containsExactly("a workbook or zip archive");
        assertThat(found("film.csv", "PK,x\n1,2\n")).containsExactly("a workbook or zip archive");
    }

    @Test
    void json_is_known_by_its_ending_in_any_letters() {
        assertThat(found("RECORD.JSON", "{\"readings\": []}")).containsExactly("nothing filled in");
    }

    @Test
    void letters_that_are_not_utf_8() throws IOException {
        Path file = Files.write(folder.resolve("film.csv"), new byte[] {'a', (byte) 0xFC, '\n'});
        assertThat(ShopRecord.read(List.of(file), PLAN).faults())
                .extracting(Fault::found)
                .containsExactly("letters that are not UTF-8");
    }

    @Test
    void all_faults_of_all_files_at_once() throws IOException {
        String rows = "F1,BR-1,BL-1 1,x,70,70,70,70\nF1,BR-1,BL-1 2,70,y,70,70,70\n";
        Path first = Files.writeString(folder.resolve("1.csv"), HEAD + rows);
        Path second = Files.writeString(folder.resolve("2.json"), "{\"issued\": [{\"run\": 1, \"kg\": \"three\"}]}");
        assertThat(ShopRecord.read(List.of(first, second), PLAN).faults()).hasSize(3);
    }
}
