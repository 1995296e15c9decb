package boltlore.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.Approved;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.report.WorkedExample;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TextWriterTest {

    @Test
    void the_worked_example_reads_as_approved() {
        Approved.check("report/worked-example", new TextWriter(100).text(WorkedExample.workbook()));
    }

    @Test
    void the_worked_example_reads_as_approved_on_a_narrow_screen() {
        Approved.check("report/worked-example-narrow", new TextWriter(60).text(WorkedExample.workbook()));
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 41, 60, 80, 100, 132, 200})
    void no_line_is_longer_than_asked_for(int width) {
        assertThat(new TextWriter(width).text(WorkedExample.workbook()).lines())
                .allMatch(line -> line.length() <= width);
    }

    @Test
    void every_column_of_a_table_that_is_too_wide_is_shown_in_some_strip() {
        TableBuilder wide = Table.named("wide");
        for (int i = 0; i < 24; i++) {
            wide.columns(Column.text("c" + i, "Column-" + i));
        }
        wide.row().put("c0", "key").put("c23", "last");
        String text = new TextWriter(80).text(wide.build());
        for (int i = 0; i < 24; i++) {
            assertThat(text).contains("Column-" + i);
        }
        assertThat(text.lines().filter(line -> line.startsWith("key")).count()).isGreaterThan(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"en | 1,234.50 | 12.75", "de | 1.234,50 | 12,75", "fr | 1\u202f234,50 | 12,75"})
    void numbers_are_written_as_people_of_the_pages_language_write_them(String language, String money, String mass) {
        TableSpec<String> spec = TableSpec.<String>named("parts")
                .text("part", "Part", part -> part)
                .money("cost", "Cost", Currency.getInstance("EUR"), part -> new BigDecimal("1234.5"))
                .decimal("mass", "Mass", "kg", 2, part -> new BigDecimal("12.75"));
        Report report = Report.named("list", "List")
                .page(Page.named("One").in(language).add(spec.of(List.of("A"))))
                .build();
        assertThat(new TextWriter(80).text(report)).contains(money).contains(mass);
    }

    @Test
    void a_catalogue_cannot_steer_the_terminal() {
        Report report = Report.named("list", "List")
                .dated(LocalDate.of(2026, 1, 1))
                .page(Page.named("One").title("clear\u001b[2J screen \u202Eturned \u0007 é 漢"))
                .build();
        assertThat(new TextWriter(80).text(report))
                .contains("clear\uFFFD[2J screen \uFFFDturned \uFFFD é 漢")
                .doesNotContain("\u001b", "\u202E", "\u0007");
    }
}
