package boltlore.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Report;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.report.WorkedExample;
import boltlore.report.drawing.Drawing;
import boltlore.report.drawing.Mark;
import boltlore.report.drawing.Point;
import java.io.StringReader;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

@DisplayName("A report as a page for browser and printer")
class HtmlWriterTest {

    private static String text(PageBuilder page) {
        return HtmlWriter.text(Report.named("list", "List")
                .in("de")
                .about("Order <1>")
                .page(page)
                .build());
    }

    /** The body is well-formed XML too, so another reader can take it apart. */
    private static Document read(String html) throws Exception {
        String body = html.substring(html.indexOf("<body>"), html.indexOf("</html>"));
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(body)));
    }

    @Test
    void holds_every_heading_row_and_caution_of_the_report() throws Exception {
        Report example = WorkedExample.workbook();
        Document page = read(HtmlWriter.text(example));
        NodeList tables = page.getElementsByTagName("table");
        assertThat(tables.getLength())
                .isEqualTo((int) example.pages().stream().flatMap(Page::tables).count());
        int rows = example.pages().stream()
                .flatMap(Page::tables)
                .mapToInt(table -> table.rows().size() + 1)
                .sum();
        assertThat(page.getElementsByTagName("tr").getLength()).isEqualTo(rows);
    }

    @Test
    void says_its_language_and_fetches_and_runs_nothing() {
        String html = text(Page.named("One").title("List"));
        assertThat(html)
                .startsWith("<!DOCTYPE html>")
                .contains("<html lang=\"de\">")
                .contains("<h1>List</h1>");
        assertThat(html)
                .doesNotContain("<script")
                .doesNotContain("http:")
                .doesNotContain("https:")
                .doesNotContain("url(");
    }

    @Test
    void text_of_others_is_text_and_no_element() throws Exception {
        TableBuilder table = Table.named("t").columns(Column.text("a", "<b>"));
        table.row().put("a", "</td><script>alert('1')</script>&\"\u0007");
        String html = text(
                Page.named("<i>").note("<script>").caution("<b>", "<img src=x>").add(table));
        assertThat(html).doesNotContain("<script").doesNotContain("<img").contains("&lt;script&gt;");
        assertThat(read(html).getElementsByTagName("td").item(0).getTextContent())
                .isEqualTo("</td><script>alert('1')</script>&\"\uFFFD");
    }

    @Test
    void a_drawing_is_svg_with_its_words_and_a_box_is_left_for_the_pen() throws Exception {
        TableBuilder table = Table.named("t").columns(Column.text("a", "A"), Column.tick("seen", "Seen"));
        table.row().put("a", "x");
        Drawing drawing = new Drawing(20, 10, "A line", List.of(Mark.line(new Point(1, 1), new Point(9, 9))));
        Document page = read(text(Page.named("One").picture(drawing).add(table)));
        assertThat(page.getElementsByTagName("svg").getLength()).isEqualTo(1);
        assertThat(page.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("A line");
        assertThat(page.getElementsByTagName("span")
                        .item(0)
                        .getAttributes()
                        .getNamedItem("class")
                        .getNodeValue())
                .isEqualTo("pen");
    }

    /** Signs as the Unicode CLDR has them; French parts thousands by a narrow no-break space. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"en|35,925.00|83.64", "de|35.925,00|83,64", "fr|35\u202F925,00|83,64"})
    void figures_read_as_people_of_that_language_write_them(String language, String amount, String ohms) {
        TableBuilder table = Table.named("t")
                .columns(
                        Column.money("amount", "A", Currency.getInstance("EUR")),
                        Column.decimal("ohms", "R", 2).in("Ω"));
        table.row().put("amount", new BigDecimal("35925")).put("ohms", new BigDecimal("83.64"));
        Report report = Report.named("list", "List")
                .in(language)
                .page(Page.named("One").add(table))
                .build();
        assertThat(HtmlWriter.text(report)).contains(">" + amount + "<", ">" + ohms + "<");
    }

    @Test
    void each_page_prints_in_its_own_orientation() {
        assertThat(text(Page.named("One").landscape().title("x"))).contains("class=\"across\"");
        assertThat(text(Page.named("One").title("x"))).contains("class=\"upright\"");
    }
}
