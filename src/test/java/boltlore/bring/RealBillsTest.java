package boltlore.bring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import boltlore.faults.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Bills of materials of open hardware, as their writers published them; they lie beside this project and are not part of it. */
@DisplayName("Of bills of materials that other people wrote")
class RealBillsTest {

    private static final Path BILLS = Path.of("../shared/data/boms");
    private static final Path ELSEWHERE = Path.of("/work/shared/data/boms");
    private static final Path TRUTH = Path.of("src/test/resources/boltlore/bring/bills.txt");

    private Path folder = BILLS;

    @BeforeEach
    void bills() {
        folder = Files.isDirectory(BILLS) ? BILLS : ELSEWHERE;
        assumeTrue(Files.isDirectory(folder), "The bills are not here: they would lie in " + BILLS);
    }

    @Test
    void nineteen_rows_of_twenty_are_read_right_without_a_hand_and_none_is_wrong_in_silence() throws IOException {
        Map<String, Judged> judged = new TreeMap<>();
        for (String line : Files.readAllLines(TRUTH)) {
            if (!line.startsWith("#")) {
                Judged.Truth truth = Judged.Truth.of(line);
                judged.merge(truth.file(), Judged.of(truth, read(truth.file())), Judged::and);
            }
        }
        Judged all = judged.values().stream().reduce(new Judged(0, 0, List.of()), Judged::and);
        judged.put("all", all);
        StringBuilder table =
                new StringBuilder(String.format("%-32s %6s %6s %6s%n", "bill", "right", "asked", "wrong"));
        judged.forEach((file, each) -> table.append(String.format(
                "%-32s %6d %6d %6d%n",
                file, each.right(), each.asked(), each.wrong().size())));
        System.out.println(table);

        assertThat(all.wrong()).isEmpty();
        assertThat(all.right() * 100).isGreaterThanOrEqualTo(all.all() * 95);
        assertThat(all.all()).isEqualTo(704);
    }

    private Brought read(String file) throws IOException {
        Outcome<Brought> read =
                Brought.read(file, Files.readAllBytes(folder.resolve(file)), null, "bill", Known.NOTHING);
        assertThat(read.faults()).isEmpty();
        return ((Outcome.Sound<Brought>) read).value();
    }

    @Test
    void parts_under_a_heading_that_says_so_are_left_out_and_named() throws IOException {
        List<String> left = read("filament-extruder.xlsx").left();

        assertThat(left)
                .filteredOn(each -> each.contains("which is not needed"))
                .hasSize(20);
    }

    @Test
    void a_hidden_sheet_is_told_and_not_read() throws IOException {
        assertThat(read("filament-extruder.xlsx").notes())
                .extracting(Doubt::at, Doubt::says)
                .contains(org.assertj.core.groups.Tuple.tuple("Helper", "the sheet is hidden, and not read"));
    }

    @Test
    void each_price_that_is_no_plain_number_is_named_by_its_cell() throws IOException {
        assertThat(read("laser-imager.csv").notes())
                .filteredOn(note -> note.says().contains("is no plain number"))
                .hasSize(20);
    }

    @Test
    void a_row_whose_quantity_and_price_do_not_make_its_total_is_asked_about() throws IOException {
        assertThat(read("six-axis-arm.xls").mapping().open())
                .filteredOn(asked -> asked.contains("is not the total"))
                .hasSize(2);
    }

    @Test
    void rows_that_a_filter_hides_are_read_and_told_once() throws IOException {
        assertThat(read("six-axis-arm.xls").notes())
                .filteredOn(note -> note.says().contains("a filter hides rows"))
                .singleElement()
                .satisfies(note -> assertThat(note.says()).contains("86 hidden"));
    }
}
