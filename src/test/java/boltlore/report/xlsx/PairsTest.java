package boltlore.report.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.Row;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A narrow list on paper, two rows or four side by side")
class PairsTest {

    @Test
    void reads_down_the_left_half_of_each_group_and_then_down_the_right() {
        assertThat(lines(list(3, 2).inPairs()))
                .containsExactly("group 0", "0.0 | 0.2", "0.1 |", "group 1", "1.0 | 1.1");
    }

    @Test
    void four_abreast_are_read_down_one_after_the_other_and_the_last_may_be_shorter() {
        assertThat(lines(list(7, 1).inFours()))
                .containsExactly("group 0", "0.0 | 0.2 | 0.4 | 0.6", "0.1 | 0.3 | 0.5 |", "group 1", "1.0 |  |  |");
    }

    @Test
    void as_many_stand_abreast_as_there_is_room_for() {
        TableBuilder table = Table.named("list")
                .columns(
                        Column.text("part", "Part"),
                        Column.blank("number", "Number").atMost(40));
        for (int i = 0; i < 4; i++) {
            table.row().put("part", "P-" + i);
        }
        Page page = Pairs.of(Page.named("One").add(table.inFours()).build());
        assertThat(page.tables().findFirst().orElseThrow().columns())
                .extracting(Column::key)
                .containsExactly("part", "number", "part-2", "number-2");
    }

    @Test
    void a_list_that_does_not_ask_for_it_stays_as_it_is() {
        assertThat(lines(list(2))).containsExactly("group 0", "0.0", "0.1");
    }

    @Test
    void a_long_group_is_read_in_stretches_that_a_sheet_of_paper_holds() {
        List<String> lines = lines(list(60).inPairs());
        assertThat(lines).hasSize(1 + 30).contains("0.0 | 0.25", "0.24 | 0.49", "0.50 | 0.55");
    }

    @Test
    void what_stands_beside_the_paper_is_left_out_and_programs_read_the_list_as_it_was() {
        Page page = Page.named("One").add(list(2).inPairs()).build();
        assertThat(Pairs.of(page).tables().findFirst().orElseThrow().columns())
                .extracting(Column::key)
                .containsExactly("part", "part-2");
        assertThat(page.tables().findFirst().orElseThrow().columns())
                .extracting(Column::key)
                .containsExactly("part", "bag");
    }

    private static TableBuilder list(int... sizes) {
        TableBuilder table = Table.named("list")
                .columns(Column.text("part", "Part"), Column.text("bag", "Bag").besideThePaper());
        for (int group = 0; group < sizes.length; group++) {
            table.group("g" + group, "group " + group);
            for (int i = 0; i < sizes[group]; i++) {
                table.row().put("part", group + "." + i).put("bag", "bag");
            }
        }
        return table;
    }

    private static List<String> lines(TableBuilder table) {
        Page page = Pairs.of(Page.named("One").add(table).build());
        return page.tables()
                .flatMap(each -> each.rows().stream().map(row -> line(each, row)))
                .toList();
    }

    private static String line(Table table, Row row) {
        return row.isPlain()
                ? row.cells().stream()
                        .limit(table.columns().stream().filter(Column::onPaper).count())
                        .map(cell -> cell instanceof Cell.Words words ? words.text() : "")
                        .collect(Collectors.joining(" | "))
                        .strip()
                : row.words();
    }
}
