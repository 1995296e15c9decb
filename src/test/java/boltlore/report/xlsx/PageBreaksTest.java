package boltlore.report.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.report.xlsx.LaidPage.LaidTable;
import boltlore.report.xlsx.LaidPage.Stretch;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A sheet of A4 takes about 64 rows of a table upright in nine points, 75 in eight (common practice, no source). */
class PageBreaksTest {

    @Test
    void what_fits_one_sheet_is_not_broken_and_repeats_nothing() {
        PageBreaks breaks = PageBreaks.of(laid(Page.named("One").add(list("list", 50))));
        assertThat(breaks.after()).isEmpty();
        assertThat(breaks.repeated()).isEmpty();
    }

    @Test
    void headings_of_a_table_that_runs_over_are_repeated() {
        PageBreaks breaks = PageBreaks.of(laid(Page.named("One").add(list("list", 90))));
        assertThat(breaks.after()).hasSize(1);
        assertThat(breaks.repeated().map(table -> table.table().name())).contains("list");
    }

    @Test
    void a_short_table_that_does_not_fit_the_rest_of_a_sheet_goes_to_the_next_with_its_heading() {
        LaidPage page =
                laid(Page.named("One").add(list("first", 62)).heading("Second").add(list("second", 20)));
        int heading = page.stretches().get(1).first();
        assertThat(PageBreaks.of(page).after()).containsExactly(heading - 1);
        assertThat(PageBreaks.of(page).repeated()).isEmpty();
    }

    @Test
    void one_that_fits_stays_on_it() {
        LaidPage page =
                laid(Page.named("One").add(list("first", 30)).heading("Second").add(list("second", 20)));
        assertThat(PageBreaks.of(page).after()).isEmpty();
    }

    @Test
    void what_is_said_before_a_table_stays_with_its_heading_and_its_first_rows() {
        for (int rows = 40; rows < 80; rows++) {
            LaidPage page = laid(led(rows).add(list("second", 20)));
            Stretch heading = page.stretches().get(1);
            Stretch table = page.stretches().get(4);
            assertThat(PageBreaks.of(page).after())
                    .as("%d rows", rows)
                    .noneMatch(row -> row >= heading.first() && row < table.first() + 2);
        }
    }

    @Test
    void notes_that_lead_to_no_table_may_be_parted() {
        PageBuilder notes = Page.named("One").heading("Notes");
        IntStream.range(0, 60).forEach(i -> notes.note("Note " + i + "."));
        LaidPage page = laid(notes);
        assertThat(PageBreaks.of(page).after())
                .isNotEmpty()
                .allSatisfy(row -> assertThat(page.stretches()).anyMatch(stretch -> stretch.first() == row + 1));
    }

    /** A table, a heading, and two cautions. */
    private static PageBuilder led(int rows) {
        return Page.named("One")
                .add(list("first", rows))
                .heading("Second")
                .note("Isolate first.")
                .note("Two people.");
    }

    @Test
    void signatures_take_rows_with_them_rather_than_stand_alone() {
        LaidPage page = laid(Page.named("One").add(list("list", 73)).signatures("Checked by", "Released by"));
        LaidTable table = page.table("list");
        assertThat(PageBreaks.of(page).after())
                .singleElement()
                .satisfies(row -> assertThat(row).isBetween(table.firstRow(), table.lastRow() - 1));
    }

    @Test
    void a_sum_is_not_parted_from_its_last_row() {
        for (int rows = 50; rows < 80; rows++) {
            TableBuilder table = list("list", rows);
            table.total("all", "All");
            LaidPage page = laid(Page.named("One").add(table));
            assertThat(PageBreaks.of(page).after())
                    .doesNotContain(page.table("list").lastRow() - 1);
        }
    }

    @Test
    void a_form_that_runs_over_goes_on_with_the_same_headings_though_another_table_s_are_repeated() {
        TableBuilder form = Table.named("form").columns(Column.text("a", "Tested"), Column.blank("b", "Reading"));
        for (int i = 0; i < 40; i++) {
            form.row().put("a", "Place " + i);
        }
        LaidPage page = laid(Page.named("One").add(list("list", 120)).add(form));
        assertThat(page.stretches().stream()
                        .map(Stretch::block)
                        .filter(block ->
                                block instanceof Table table && table.name().equals("form")))
                .hasSizeGreaterThan(1);
        assertThat(page.stretches().stream()
                        .map(Stretch::block)
                        .filter(block ->
                                block instanceof Table table && table.name().equals("list")))
                .hasSize(1);
    }

    /** Whether its headings are repeated, or it is divided because another's are. */
    @Test
    void a_group_of_a_form_that_runs_over_is_headed_again_and_one_that_begins_there_is_not() {
        assertThat(groups(Page.named("One").add(form(100)))).containsExactly("Crate 1", "Crate 1 (continued)");
        assertThat(groups(Page.named("One").add(list("list", 100)).add(form(80))))
                .containsExactly("Crate 1", "Crate 1 (continued)");
        assertThat(groups(Page.named("One").add(form(60, 60)))).containsExactly("Crate 1", "Crate 2");
    }

    private static TableBuilder form(int... sizes) {
        TableBuilder form = Table.named("form").columns(Column.text("a", "Part"), Column.tick("b", "OK"));
        for (int crate = 1; crate <= sizes.length; crate++) {
            form.group("crate-" + crate, "Crate " + crate);
            for (int i = 0; i < sizes[crate - 1]; i++) {
                form.row().put("a", "Part " + i);
            }
        }
        return form;
    }

    private static List<String> groups(PageBuilder page) {
        LaidPage laid = laid(page);
        List<Integer> heads =
                PageBreaks.of(laid).after().stream().map(row -> row + 1).toList();
        List<String> groups = new ArrayList<>();
        for (Stretch stretch : laid.stretches()) {
            if (stretch.block() instanceof Table table) {
                for (int i = 0; i < table.rows().size(); i++) {
                    String words = table.rows().get(i).words();
                    if (!words.isEmpty()) {
                        groups.add(words);
                    }
                    boolean first =
                            heads.contains(stretch.first() + 1 + i) || (i == 0 && heads.contains(stretch.first()));
                    assertThat(first || !words.contains("continued"))
                            .as("row %d", i)
                            .isTrue();
                }
            }
        }
        return groups;
    }

    private static LaidPage laid(PageBuilder page) {
        return PageLayout.lay(page.build(), "en").page();
    }

    private static TableBuilder list(String name, int rows) {
        TableBuilder table = Table.named(name).columns(Column.text("a", "Part"), Column.text("b", "Name"));
        for (int i = 0; i < rows; i++) {
            table.row().put("a", "PV-" + i).put("b", "Bracket number " + i);
        }
        return table;
    }
}
