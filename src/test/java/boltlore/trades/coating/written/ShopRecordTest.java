package boltlore.trades.coating.written;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.trades.coating.CoatPlan;
import boltlore.trades.coating.CoatPlanner;
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

    private static final String HEAD =
            "Batch,Part,Which piece,Reading 1 (µm),Reading 2,Reading 3,Reading 4,Reading 5\n";

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
        ShopRecord record = sound("film.csv", HEAD + "1,BR-1,BL-1 2,70,71.5,69,74,70\n");
        assertThat(record.film().get(0).um()).hasSize(5);
        assertThat(record.film().get(0).piece()).isEqualTo("BL-1 2");
    }

    @Test
    void rows_without_readings_are_passed_over() {
        String text = HEAD + "1,BR-1,,,,,,\n1,BR-1,BL-1 2,70,71.5,69,74,70\n";
        assertThat(sound("film.csv", text).film()).hasSize(1);
    }

    @Test
    void a_table_in_which_nothing_is_filled_in_is_told() {
        assertThat(found("film.csv", HEAD + "1,BR-1,,,,,,\n")).containsExactly("nothing filled in");
    }

    @Test
    void as_a_spreadsheet_writes_it_where_the_comma_is_decimal() {
        String text = "\uFEFF" + HEAD.replace(',', ';') + "1;BR-1;;70;71,5;69;74;70\n";
        assertThat(sound("film.csv", text).film().get(0).um().get(1)).isEqualByComparingTo("71.5");
    }

    @Test
    void quoted_cells_may_hold_separators_quotes_and_line_breaks() {
        String text = "Name," + HEAD + "\"a \"\"b\"\",\nc\",1,BR-1,,70,71,69,74,70\n";
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
                "{\"readings\": [{\"batch\": 1, \"part\": \"BR-1\", \"um\": [70, \"71.5\", 69, 74, 70]}],"
                        + " \"issued\": [{\"run\": 1, \"kg\": \"3.4\"}]}");
        assertThat(record.film()).hasSize(1);
        assertThat(record.issued().get(0).kg()).isEqualByComparingTo("3.4");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "1,BR-1,,ok,70,70,70,70 | reading 1 | 'ok' | a film in µm",
                "1,BR-1,,70,-70,70,70,70 | reading 2 | '-70' | a film in µm",
                "1,BR-1,,70,70,0,70,70 | reading 3 | '0' | a film in µm",
                "1,BR-1,,70,70,70,1001,70 | reading 4 | '1001' | at most 1000",
                "1,BR-1,,70,70,70,70,1e2 | reading 5 | '1e2' | a film in µm",
                "1,BR-1,,70,70,70,, | ~~ | 3 readings | 5 on each piece",
                "one,BR-1,,70,70,70,70,70 | batch | 'one' | the number of a batch",
                "2,BR-1,,70,70,70,70,70 | ~~ | batch 2 | a batch of our own ovens",
                "1,BR-2,,70,70,70,70,70 | ~~ | part 'BR-2' | a part of batch 1",
                "1,BR-1,BL-1 4,70,70,70,70,70 | ~~ | piece 'BL-1 4' | a piece of BR-1 in batch 1"
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
        assertThat(sound("film.csv", HEAD + "1,BR-1,,1000,70,70,70,70\n").film())
                .hasSize(1);
    }

    @Test
    void a_piece_read_twice() {
        String row = "1,BR-1,BL-1 2,70,71,69,74,70\n";
        assertThat(found("film.csv", HEAD + row + row)).containsExactly("piece 'BL-1 2' of BR-1 a second time");
    }

    @Test
    void more_pieces_read_than_there_are() {
        String row = "1,BR-1,,70,71,69,74,70\n";
        assertThat(found("film.csv", HEAD + row.repeat(3))).isEmpty();
        assertThat(found("film.csv", HEAD + row.repeat(4))).containsExactly("a reading of piece number 4 of BR-1");
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
    void letters_that_are_not_utf_8() throws IOException {
        Path file = Files.write(folder.resolve("film.csv"), new byte[] {'a', (byte) 0xFC, '\n'});
        assertThat(ShopRecord.read(List.of(file), PLAN).faults())
                .extracting(Fault::found)
                .containsExactly("letters that are not UTF-8");
    }

    @Test
    void all_faults_of_all_files_at_once() throws IOException {
        String rows = "1,BR-1,,x,70,70,70,70\n1,BR-1,,70,y,70,70,70\n";
        Path first = Files.writeString(folder.resolve("1.csv"), HEAD + rows);
        Path second = Files.writeString(folder.resolve("2.json"), "{\"issued\": [{\"run\": 1, \"kg\": \"three\"}]}");
        assertThat(ShopRecord.read(List.of(first, second), PLAN).faults()).hasSize(3);
    }
}
