package boltlore.report.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A table below the paper")
class BelowPaperTest {

    private static TableBuilder table(String name) {
        TableBuilder table = Table.named(name).columns(Column.text("part", "Part of " + name));
        for (int i = 0; i < 200; i++) {
            table.row().put("part", name + " " + i);
        }
        return table;
    }

    private static XSSFWorkbook book(TableBuilder last) throws IOException {
        Report report = Report.named("book", "Book")
                .page(Page.named("Sheet").add(table("shown")).add(last))
                .build();
        return new XSSFWorkbook(
                new ByteArrayInputStream(new XlsxWriter().write(report).get(0).content()));
    }

    @Test
    void stands_on_the_sheet_but_in_no_print() throws IOException {
        try (XSSFWorkbook book = book(table("kept").belowThePaper())) {
            assertThat(book.getPrintArea(0)).endsWith("$202");
            assertThat(book.getSheetAt(0).getLastRowNum()).isEqualTo(402);
            assertThat(book.getSheetAt(0).getRowBreaks()).isNotEmpty().doesNotContain(202);
        }
    }

    @Test
    void is_printed_where_it_is_a_table_like_others() throws IOException {
        try (XSSFWorkbook book = book(table("kept"))) {
            assertThat(book.getPrintArea(0)).endsWith("$403");
        }
    }
}
