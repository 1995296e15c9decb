package boltlore.report;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.findings.Finding;
import boltlore.report.StopsAtHead.Stop;
import boltlore.report.html.HtmlWriter;
import boltlore.report.json.ReportJson;
import boltlore.report.text.TextWriter;
import boltlore.trades.shipping.ShippingFinding;
import boltlore.trades.weighing.WeighingFinding;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What stops an order, at the head of a sheet")
class StopsAtHeadTest {

    private static final Stop LIFTS = new Stop("", Finding.of(WeighingFinding.AXLE_LIFTS_OFF, "axle"));
    private static final Stop UNPACKED = new Stop("", Finding.of(ShippingFinding.NO_CRATES, "crates"));

    private static Report report(String language) {
        return Report.named("list", "List")
                .in(language)
                .page(Page.named("Front").title("Picking list").note("Take."))
                .page(Page.named("Behind").title("Bags").note("Count."))
                .build();
    }

    private static String text(Report report) {
        return new TextWriter(400).text(report).replaceAll("[\\s|+=-]+", " ");
    }

    @Test
    void stands_right_below_the_title_and_is_pointed_to_from_other_pages() {
        assertThat(text(StopsAtHead.on(report("en"), List.of(LIFTS))))
                .containsSubsequence(
                        "Picking list",
                        "STOP, not to be cut, coated, picked or shipped before this is settled: More is removed",
                        "Take.",
                        "Bags",
                        "STOP",
                        LIFTS.finding().kind().title("en"),
                        "1 at the head of the page 'Front' of this workbook.",
                        "Count.");
    }

    @Test
    void stands_in_a_few_words_above_each_sheet_of_paper() {
        Report stopped = StopsAtHead.on(report("en"), List.of(LIFTS));
        assertThat(stopped.pages())
                .allSatisfy(page -> assertThat(page.print().header())
                        .isEqualTo("STOP, not to be cut, coated, picked or shipped before this is settled: "
                                + LIFTS.finding().kind().title("en")));
        assertThat(report("en").pages())
                .allSatisfy(page -> assertThat(page.print().header()).isEmpty());
    }

    @Test
    void above_what_goes_to_customers_stands_only_that_it_waits() {
        assertThat(StopsAtHead.forCustomers(report("en"), List.of(LIFTS)).pages())
                .allSatisfy(page ->
                        assertThat(page.print().header()).isEqualTo("STOP, not to be sent before this is settled"));
    }

    @Test
    void leaves_a_sheet_alone_where_nothing_stops() {
        Report plain = report("en");
        assertThat(StopsAtHead.on(plain, List.of())).isSameAs(plain);
    }

    @Test
    void stops_all_work_unless_only_the_shipping_waits() {
        assertThat(text(StopsAtHead.on(report("en"), List.of(UNPACKED))))
                .contains("STOP, not to be shipped before this is settled: ")
                .doesNotContain("not to be cut");
        assertThat(text(StopsAtHead.on(report("en"), List.of(UNPACKED, LIFTS))))
                .containsSubsequence("not to be shipped before", "not to be cut", "2 at the head of");
    }

    @Test
    void names_the_order_on_a_sheet_of_several() {
        assertThat(text(StopsAtHead.on(report("en"), List.of(new Stop("BL-7", LIFTS.finding())))))
                .contains("settled: BL 7: More is removed");
    }

    private static boolean stopped(Report report, int page) {
        Page asked = report.pages().get(page);
        boolean above = !asked.print().header().isEmpty();
        assertThat(asked.blocks().stream()
                        .anyMatch(block ->
                                block instanceof Note note && note.key().equals("stop")))
                .isEqualTo(above);
        return above;
    }

    @Test
    void is_told_on_a_further_page_where_the_stopped_order_is_named_and_not_where_only_others_are() {
        Report several = Report.named("batch", "Batch")
                .page(Page.named("Front").title("Batch").note("Of BL-7."))
                .page(Page.named("Run 1").title("Run 1").note("Hang BL-7 1–4, BL-71 1."))
                .page(Page.named("Run 2").title("Run 2").note("Hang BL-71 1–4."))
                .page(Page.named("Powders").title("Powders").note("Weigh."))
                .build();
        List<Stop> stops = List.of(new Stop("BL-7", LIFTS.finding()));
        Report one = StopsAtHead.on(several, stops, List.of("BL-7", "BL-71"));
        assertThat(IntStream.range(0, 4).mapToObj(at -> stopped(one, at)))
                .as("first page, its run, another's run, a page that names no order")
                .containsExactly(true, true, false, true);
        Report whole = StopsAtHead.on(several, List.of(LIFTS), List.of("BL-7", "BL-71"));
        assertThat(IntStream.range(0, 4).mapToObj(at -> stopped(whole, at))).containsOnly(true);
    }

    @Test
    void speaks_the_workshops_language_on_a_page_that_speaks_the_customers() {
        Report labels = Report.named("papers", "Papers")
                .page(Page.named("Crates").title("Crates"))
                .page(Page.named("Labels").in("fr").note("De Boltlore"))
                .build();
        assertThat(StopsAtHead.on(labels, List.of(UNPACKED))
                        .pages()
                        .get(1)
                        .print()
                        .header())
                .startsWith("STOP, not to be shipped");
        assertThat(StopsAtHead.forCustomers(labels, List.of(UNPACKED))
                        .pages()
                        .get(1)
                        .print()
                        .header())
                .startsWith("ARRÊT");
    }

    @Test
    void above_the_paper_says_how_many_orders_wait_where_their_numbers_do_not_fit() {
        List<Stop> few = List.of(
                new Stop("BL-7", LIFTS.finding()),
                new Stop("BL-8", LIFTS.finding()),
                new Stop("BL-9", LIFTS.finding()));
        assertThat(StopsAtHead.on(report("en"), few).pages().get(1).print().header())
                .isEqualTo("STOP, not to be cut, coated, picked or shipped before this is settled: BL-7, BL-8, BL-9");
        List<Stop> many = IntStream.range(1000, 1010)
                .mapToObj(number -> new Stop("BL-" + number, LIFTS.finding()))
                .toList();
        assertThat(StopsAtHead.on(report("en"), many).pages())
                .allSatisfy(page -> assertThat(page.print().header())
                        .endsWith("settled: 10 orders, see 'Front'")
                        .hasSizeLessThanOrEqualTo(120));
    }

    @ParameterizedTest
    @CsvSource({
        "en, 'STOP, not to be sent before this is settled: ask the workshop.'",
        "de, 'STOPP, nicht versenden oder weitergeben, bevor dies geklärt ist: bitte in der Werkstatt nachfragen.'",
        "fr, 'ARRÊT, ne pas envoyer avant que ceci soit réglé\u00a0: s''adresser à l''atelier.'"
    })
    void is_one_line_without_what_was_found_on_each_page_that_goes_to_customers(String language, String says) {
        Report stopped = StopsAtHead.forCustomers(report(language), List.of(UNPACKED, LIFTS));
        assertThat(stopped.pages())
                .hasSize(2)
                .allSatisfy(page -> assertThat(page.blocks())
                        .filteredOn(block ->
                                block instanceof Note note && note.key().equals("stop"))
                        .singleElement()
                        .satisfies(block ->
                                assertThat(said((Note) block, language)).isEqualTo(says)));
        assertThat(text(stopped)).doesNotContain("More is removed", "at the head of");
    }

    private static String said(Note note, String language) {
        return note.lead() + Note.colon(language) + note.text();
    }

    @Test
    void leaves_a_customers_sheet_alone_where_nothing_stops() {
        Report plain = report("en");
        assertThat(StopsAtHead.forCustomers(plain, List.of())).isSameAs(plain);
    }

    @ParameterizedTest
    @CsvSource({"de, STOPP", "fr, ARRÊT"})
    void speaks_the_language_of_the_sheet(String language, String word) {
        assertThat(text(StopsAtHead.on(report(language), List.of(LIFTS))))
                .contains(word)
                .doesNotContain("STOP,");
    }

    @Test
    void is_told_on_pages_for_a_browser_to_programs_and_on_a_terminal() {
        Report stopped = StopsAtHead.on(report("en"), List.of(LIFTS));
        String html = new String(new HtmlWriter().write(stopped).get(0).content(), StandardCharsets.UTF_8);
        assertThat(html).contains("STOP, not to be cut");
        assertThat(ReportJson.encode(stopped).written()).contains("\"code\": \"stop\"");
        assertThat(stopped.glance()).hasSize(1);
    }
}
