package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.cli.EditedBook.Edits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Row;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Edited by a program that knows no Boltlore, as a person would in a spreadsheet. */
@DisplayName("boltlore bring --onto, with a workbook in which more than lines was edited")
class BringFamilyBackTest {

    @TempDir
    private Path folder;

    private Path into;
    private Path edited;

    @BeforeEach
    void write() {
        into = folder.resolve("catalogue");
        edited = folder.resolve("edited");
        boltlore("new", "workshop", into);
        boltlore("new", "family", "lamp-cart", "--catalogue", into);
        boltlore("parts-list", "--catalogue", into, "--out", folder);
    }

    private Ran back(Consumer<Edits> edit, Object... more) throws IOException {
        EditedBook book = new EditedBook(folder.resolve("lamp-cart-lines.xlsx"));
        book.edit(edit);
        return book.broughtOnto(into, edited, more);
    }

    private String family() throws IOException {
        return Files.readString(edited.resolve("families/lamp-cart/family.json"));
    }

    @Test
    void a_new_position_comes_in_with_its_line_where_its_row_stands() throws IOException {
        Ran ran = back(book -> {
            book.add("Positions", "Position", "horn", "Says", "Horn", "Lines in a kit", "some");
            book.add("Lines", "Position", "horn", "Line", "horn", "Part number", "LAMP-CART-LAMP", "Quantity", "2");
        });

        assertThat(ran.out()).contains("position horn is new: fill 'some'; says 'Horn'", "line horn at horn is new");
        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        assertThat(edited.resolve("families/lamp-cart/kit/all.json"))
                .content()
                .containsPattern("LAMP-CART-BOLT[\\s\\S]*\"position\": \"horn\"");
        assertThat(boltlore("check", edited).out()).contains("No errors:");
    }

    @Test
    void a_new_position_without_a_line_is_a_fault() throws IOException {
        Ran ran = back(book -> book.add("Positions", "Position", "horn"));

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("no line of the new position 'horn'");
        assertThat(edited).doesNotExist();
    }

    @Test
    void a_position_is_called_otherwise() throws IOException {
        Ran ran = back(book -> book.set("Positions", "Position", "lamp-cart-lamp", "Says", "Head lamp"));

        assertThat(ran.out()).contains("position lamp-cart-lamp: says 'Head lamp' instead of ");
        assertThat(edited.resolve("families/lamp-cart/kit/all.json")).content().contains("Head lamp");
    }

    @Test
    void a_new_value_may_have_a_column_among_the_lines() throws IOException {
        Ran ran = back(book -> {
            book.add("Options", "Option", "body", "Value", "open", "Says", "Open body");
            Row heads = book.heading("Lines", "Position").getRow();
            heads.createCell(heads.getLastCellNum()).setCellValue("body = open");
            book.set("Lines", "Line", "frame-lamp-cart-frame-l", "body = open", "x");
        });

        assertThat(ran.out())
                .contains("value open of option body is new: says 'Open body'")
                .contains("fitted in (Late or body open) instead of Late")
                .doesNotContain("option body:");
        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        assertThat(family().replaceAll("\\s+", " ")).contains("\"value\": \"open\", \"says\": \"Open body\"");
    }

    @Test
    void a_new_option_comes_in_with_its_values_and_the_one_that_is_offered_first() throws IOException {
        Ran ran = back(book -> {
            book.add("Options", "Option", "paint", "Value", "green", "Offered first", "x", "Question", "Which paint?");
            book.add("Options", "Option", "paint", "Value", "grey");
        });

        assertThat(ran.out()).contains("option paint is new: asks 'Which paint?'; default 'green'");
        assertThat(family().replaceAll("\\s+", " "))
                .contains(
                        "\"option\": \"paint\", \"asks\": \"Which paint?\", \"default\": \"green\", \"values\"",
                        "\"grey\"");
        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
    }

    @Test
    void a_value_that_lines_still_name_is_not_taken_out_in_silence() throws IOException {
        Ran ran = back(book -> {
            book.remove("Options", "Value", "early");
        });

        assertThat(ran.out()).contains("value early of option body is taken out");
        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("'early'");
        assertThat(edited).doesNotExist();
    }

    @Test
    void a_new_limit_comes_in_and_the_kits_that_it_takes_away_are_told() throws IOException {
        Ran ran = back(book -> book.add(
                "Limits",
                "Limit",
                "no-late-lamp",
                "Because",
                "The late body has a lamp of its own.",
                "Never, as a condition",
                "{\"body\": \"late\", \"lamp\": \"yes\"}"));

        assertThat(ran.out()).contains("limit no-late-lamp is new");
        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        assertThat(family()).contains("\"limit\": \"no-late-lamp\"", "\"never\"");
    }

    @Test
    void a_condition_that_cannot_be_read_is_a_fault() throws IOException {
        Ran ran = back(book ->
                book.add("Limits", "Limit", "odd", "Because", "It is.", "Never, as a condition", "lamp and late"));

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("lamp and late");
        assertThat(edited).doesNotExist();
    }

    @Test
    void one_name_twice_is_a_fault() throws IOException {
        Ran ran = back(book -> book.add("Options", "Option", "body", "Value", "late"));

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("'body = late' a second time");
    }

    /** The lamp is a part of the early body alone, though every order must have one. */
    private static void unproved(Edits book) {
        book.set("Lines", "Line", "lamp-cart-lamp", "body = early", "x");
        book.set("Positions", "Position", "lamp-cart-lamp", "Required, as a condition", "{\"body\": \"late\"}");
    }

    @Test
    void what_the_proof_finds_is_told_and_nothing_is_written() throws IOException {
        Ran ran = back(BringFamilyBackTest::unproved);

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.STOPPED);
        assertThat(ran.out()).contains("lamp-cart-lamp", "does not hold as it is", "--yes writes it all the same");
        assertThat(edited).doesNotExist();
    }

    @Test
    void what_the_proof_finds_is_written_where_somebody_insists_and_the_code_says_it_still() throws IOException {
        Ran ran = back(BringFamilyBackTest::unproved, "--yes");

        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(ran.out()).contains("Written into " + edited);
        assertThat(boltlore("prove", "lamp-cart", "--catalogue", edited).exit()).isEqualTo(Exit.STOPPED);
    }
}
