package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("boltlore bring --onto, with a workbook of another day, and with cells that do not come back")
class BringEditedBackTest {

    @TempDir
    private Path folder;

    private Path into;
    private Path kit;
    private EditedBook book;

    @BeforeEach
    void write() {
        into = folder.resolve("catalogue");
        kit = into.resolve("families/lamp-cart/kit/all.json");
        boltlore("new", "workshop", into);
        boltlore("new", "family", "lamp-cart", "--catalogue", into);
        boltlore("parts-list", "--catalogue", into, "--out", folder);
        book = new EditedBook(folder.resolve("lamp-cart-lines.xlsx"));
    }

    private Ran back(Object... more) {
        return book.broughtOnto(into, folder.resolve("edited"), more);
    }

    private String edited() throws IOException {
        return Files.readString(folder.resolve("edited/families/lamp-cart/kit/all.json"));
    }

    /** What a colleague makes of the kit in the meantime. */
    private void meanwhile(String from, String to) throws IOException {
        String text = Files.readString(kit);
        assertThat(text).contains(from);
        Files.writeString(kit, text.replace(from, to));
    }

    private static String quantity(String part, String quantity) {
        return "\"" + part + "\", \"quantity\": \"" + quantity + "\"";
    }

    @Test
    void what_others_edited_since_stays_and_is_told() throws IOException {
        meanwhile(quantity("LAMP-CART-BOLT", "8"), quantity("LAMP-CART-BOLT", "12"));
        book.edit(edits -> edits.set("Lines", "Line", "lamp-cart-lamp", "Quantity", "2"));

        Ran ran = back();

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        assertThat(ran.out())
                .contains("Changed in lamp-cart: 1", "line lamp-cart-lamp at lamp-cart-lamp: quantity 2 instead of 1")
                .contains("Since the workbook was written: line lamp-cart-bolt")
                .containsPattern("quantity 12\\s+instead of 8");
        assertThat(edited()).contains(quantity("LAMP-CART-BOLT", "12"));
    }

    @Test
    void what_both_edited_is_a_fault_at_its_cell() throws IOException {
        meanwhile(quantity("LAMP-CART-BOLT", "8"), quantity("LAMP-CART-BOLT", "12"));
        book.edit(edits -> edits.set("Lines", "Line", "lamp-cart-bolt", "Quantity", "6"));

        Ran ran = back();

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).containsPattern("Lines!E\\d+").contains("'6' in 'lamp-cart-bolt'", "says '12'");
        assertThat(folder.resolve("edited")).doesNotExist();
    }

    @Test
    void the_same_workbook_a_second_time_changes_nothing() throws IOException {
        book.edit(edits -> {
            edits.set("Lines", "Line", "lamp-cart-bolt", "Quantity", "6");
            edits.add(
                    "Limits",
                    "Limit",
                    "odd",
                    "Because",
                    "It is.",
                    "Never, as a condition",
                    "{\"lamp\": \"yes\", \"body\": \"late\"}");
        });
        assertThat(back("--yes").out()).contains("Changed in lamp-cart: 2");

        Ran again = book.broughtOnto(folder.resolve("edited"), folder.resolve("again"));

        assertThat(again.out()).contains("Nothing was changed.").doesNotContain("limit odd:");
        assertThat(again.exit()).isEqualTo(Exit.OK);
    }

    @Test
    void without_what_it_was_written_from_an_older_workbook_is_refused_unless_somebody_insists() throws IOException {
        meanwhile(quantity("LAMP-CART-BOLT", "8"), quantity("LAMP-CART-BOLT", "12"));
        book.edit(edits -> edits.workbook().removeSheetAt(edits.workbook().getSheetIndex("As written")));

        Ran refused = back();
        Ran insisted = back("--as-of-now");

        assertThat(refused.exit()).isEqualTo(Exit.FAULTS);
        assertThat(refused.err()).contains("another state of lamp-cart", "--as-of-now");
        assertThat(insisted.out()).contains("quantity 8 instead of 12");
        assertThat(insisted.exit()).isEqualTo(Exit.OK);
    }

    @Test
    void what_the_workbook_was_written_from_is_not_believed_where_somebody_wrote_in_it() throws IOException {
        meanwhile(quantity("LAMP-CART-BOLT", "8"), quantity("LAMP-CART-BOLT", "12"));
        book.edit(edits -> {
            Sheet kept = edits.workbook().getSheet("As written");
            Row last = kept.getRow(kept.getLastRowNum());
            last.createCell(2).setCellValue("{\"says\": \"Other\"}");
        });

        assertThat(back().err()).contains("without the sheet 'As written' as it was written");
    }

    @Test
    void a_workbook_is_known_by_what_it_holds_and_not_by_its_name() throws IOException {
        Path other = Files.copy(folder.resolve("lamp-cart-lines.xlsx"), folder.resolve("from-the-desk.xlsx"));

        assertThat(boltlore("bring", other, "--onto", into).out()).contains("Nothing was changed.");
    }

    @Test
    void a_name_of_another_family_than_the_workbook_holds_is_refused() throws IOException {
        boltlore("new", "family", "oil-cart", "--catalogue", into);
        Path other = Files.copy(folder.resolve("lamp-cart-lines.xlsx"), folder.resolve("oil-cart-lines.xlsx"));

        Ran ran = boltlore("bring", other, "--onto", into);

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("a file named as one of oil-cart, with the lines of lamp-cart");
    }

    @Test
    void a_position_that_goes_with_its_only_line_is_told() throws IOException {
        book.edit(edits -> edits.remove("Lines", "Line", "lamp-cart-bolt"));

        Ran ran = back("--yes");

        assertThat(ran.out())
                .contains("line lamp-cart-bolt at lamp-cart-bolt is taken out")
                .contains("position lamp-cart-bolt is taken out with its last line");
    }

    @Test
    void a_position_without_a_row_that_has_a_line_still_is_a_fault() throws IOException {
        book.edit(edits -> edits.remove("Positions", "Position", "lamp-cart-bolt"));

        Ran ran = back();

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("a line of position 'lamp-cart-bolt'", "both or none of them");
    }

    @Test
    void cells_that_do_not_come_back_are_named_with_the_reason() throws IOException {
        book.edit(edits -> {
            edits.set("Lines", "Line", "lamp-cart-bolt", "Name", "Screw");
            edits.set("Lines", "Line", "lamp-cart-lamp", "Unit", "dozen");
            edits.set("Positions", "Position", "lamp-cart-lamp", "Required in orders with", "all");
            edits.workbook().removeSheetAt(edits.workbook().getSheetIndex("Options"));
            edits.workbook().createSheet("Mine").createRow(0).createCell(0).setCellValue("remember");
        });

        String told = back().out().replaceAll("\\s+", " ");

        assertThat(told)
                .contains("Nothing was changed.")
                .containsPattern("Lines!D\\d+ 'Screw' is not taken: it is of the part LAMP-CART-BOLT")
                .containsPattern("Lines!F\\d+ 'dozen' is not taken")
                .containsPattern("Positions!I\\d+ 'all' is not taken: the words follow from the condition")
                .contains("The sheet Options is not taken: it is gone", "The sheet Mine is not taken");
    }

    @Test
    void a_line_that_is_called_otherwise_stays_the_same_line() throws IOException {
        book.edit(edits -> edits.set("Lines", "Line", "lamp-cart-bolt", "Line", "wheel-bolt"));

        Ran ran = back();

        assertThat(ran.out())
                .contains("line lamp-cart-bolt at lamp-cart-bolt: called wheel-bolt")
                .doesNotContain("is new", "taken out");
        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        assertThat(edited()).contains("\"line\": \"wheel-bolt\"");
    }

    @Test
    void what_nobody_edited_stays_byte_for_byte() throws IOException {
        Files.writeString(kit, Files.readString(kit).replace(": ", " :   ").replace("\n", "\n\n"));
        String before = Files.readString(kit);
        book.edit(edits -> edits.set("Lines", "Line", "lamp-cart-bolt", "Quantity", "6"));

        assertThat(back().exit()).isEqualTo(Exit.OK);

        assertThat(edited()).isEqualTo(before.replace("\"8\"", "\"6\""));
        assertThat(folder.resolve("edited/families/lamp-cart/family.json"))
                .hasSameBinaryContentAs(into.resolve("families/lamp-cart/family.json"));
    }

    @Test
    void a_column_that_is_gone_takes_no_mark_away_in_silence() throws IOException {
        book.edit(edits -> edits.heading("Lines", "lamp = yes").setBlank());

        Ran ran = back();

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("no column 'lamp = yes', which had a mark here");
    }

    @Test
    void a_mark_that_is_an_error_is_none_in_silence() throws IOException {
        book.edit(edits -> edits.set("Lines", "Line", "lamp-cart-lamp", "lamp = yes", "perhaps"));

        Ran ran = back();

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("found 'perhaps'; expected 'x', or nothing");
    }

    @Test
    void a_fault_of_a_file_that_nobody_edited_is_told_at_its_own_line() throws IOException {
        book.edit(edits -> edits.remove("Lines", "Line", "lamp-cart-bolt"));

        Ran ran = back();

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err())
                .contains(into.resolve("parts") + "/")
                .containsPattern("json:\\d+ ")
                .contains("LAMP-CART-BOLT, which nothing uses")
                .doesNotContain("as edited");
    }

    @Test
    void faults_of_cells_and_of_what_comes_of_them_are_told_at_once_each_at_its_cell() throws IOException {
        book.edit(edits -> {
            edits.set("Lines", "Line", "lamp-cart-bolt", "Part number", "LAMP-CART-BLOT");
            edits.set("Lines", "Line", "lamp-cart-lamp", "Quantity", "few");
            edits.set("Positions", "Position", "lamp-cart-lamp", "Stage", "after lunch");
            edits.add(
                    "Limits", "Limit", "odd", "Because", "It is.", "Never, as a condition", "{\"lamp\": \"perhaps\"}");
        });

        Ran ran = back();

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err())
                .containsPattern("Lines!C\\d+")
                .contains("LAMP-CART-BLOT")
                .containsPattern("Lines!E\\d+")
                .contains("'few'")
                .containsPattern("Positions!D\\d+")
                .contains("after lunch")
                .containsPattern("Limits!D\\d+")
                .contains("perhaps")
                .doesNotContain("as edited");
    }
}
